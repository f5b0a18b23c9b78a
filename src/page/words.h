#pragma once

#include <QCoreApplication>

namespace bastewright::page {

/// What the phones' page is told, in the language of the tablet.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Guests)
};

} // namespace bastewright::page
