#pragma once

#include <QByteArray>
#include <QImage>
#include <QRectF>
#include <QString>
#include <QStringList>

#include <vector>

/// Reads sheets back with programs that had no part in writing them (poppler-utils).
namespace bastewright::pdf {

/// The first of the tools that is not installed; empty where all are there. Tests skip loudly on
/// it.
QString missingTool();

/// Width and height of every page in points, as pdfinfo gives them.
struct PageSize {
    double width = 0, height = 0;
};
std::vector<PageSize> pageSizes(const QString& path);
QString documentTitle(const QString& path);

/// Text of every page in the order it was drawn, compatibility characters (ligatures, no-break
/// spaces) taken apart (NFKC), marks of direction left out, all white space one space.
std::vector<QString> pageTexts(const QString& path);

/// Same rule for a text to compare with.
QString normalised(const QString& text);

struct FontLine {
    QString name;
    bool embedded = false;
};
std::vector<FontLine> fonts(const QString& path);

/// A level line of text in its place, in points from the page's upper left corner, as pdftohtml
/// gives it (upright text comes out in pieces without a width, and is left out).
struct TextLine {
    int page = 0; ///< from 0
    QRectF at;
    double size = 0;
    bool bold = false; ///< all of it
    QString text;
};
std::vector<TextLine> textLines(const QString& path);

/// Every page up to the last one wanted as a grey picture.
std::vector<QImage> pictures(const QString& path, int dotsPerInch, int last = 9999);

/// How often glyph 0, the mark for a missing glyph, is shown in the file's own content streams.
int missingGlyphs(const QByteArray& file);

/// How often a colour that is no grey is set in the file's own content streams.
int coloursIn(const QByteArray& file);

} // namespace bastewright::pdf
