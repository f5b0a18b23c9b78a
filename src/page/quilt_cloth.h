#pragma once

#include "job/top.h"

#include <QByteArray>

#include <map>

namespace bastewright::page {

/// The tops of a session as phones show them under their zones: photo or fabrics, each drawn and
/// coded once.
class QuiltCloth {
public:
    /// A JPEG of the whole top, head up, at most `kSide` pixels along its longer side.
    const QByteArray& jpeg(int quilt, const Top& top);
    static constexpr int kSide = 560;

private:
    struct Drawn {
        Top top;
        QByteArray jpeg;
    };
    std::map<int, Drawn> drawn_;
};

} // namespace bastewright::page
