#pragma once

#include "fixture.h"
#include "pdf_reader.h"
#include "sheets/sheets.h"

#include <QString>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace bastewright {

/// Sheets of a plan, written into a folder that goes with the test.
struct Written {
    Session session;
    Plan plan;
    QTemporaryDir folder;
    QString path;

    Written(Session s, Plan p, const SheetOptions& options = {})
        : session{std::move(s)}
        , plan{std::move(p)} {
        const auto files = writeSheets(session, plan, folder.path().toStdString(), options);
        if (files)
            path = QString::fromStdString(files->front());
        else
            ADD_FAILURE() << files.error();
    }
    explicit Written(const Session& s, const SheetOptions& options = {})
        : Written{s, fixture::planByHand(s), options} {}
};

} // namespace bastewright

/// Loud where the reader's programs are missing.
#define SKIP_WITHOUT_POPPLER()                                                                     \
    if (const QString tool = bastewright::pdf::missingTool(); !tool.isEmpty())                     \
    GTEST_SKIP() << "SKIPPED: " << tool.toStdString()                                              \
                 << " is not installed; the sheets were not read back."
