#pragma once

#include "session/record.h"
#include "sheets/paper.h"

#include <QString>

/// The record of a session as pages to print, in a PDF: what was done, by whom, how long each call
/// took, pins as a sum, notes, room to write. `path` is the file; returns why it could not be
/// written, else nothing.
QString writeRecordPage(const bastewright::Record& record, const QString& title,
                        const QString& path, bastewright::Paper paper);
