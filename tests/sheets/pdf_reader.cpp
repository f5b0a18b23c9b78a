#include "pdf_reader.h"

#include <QDir>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include <map>

namespace bastewright::pdf {
namespace {

QString run(const QString& tool, const QStringList& arguments) {
    QProcess process;
    process.start(tool, arguments);
    process.waitForFinished(120'000);
    return QString::fromUtf8(process.readAllStandardOutput());
}

} // namespace

QString missingTool() {
    for (const char* tool : {"pdfinfo", "pdftotext", "pdffonts", "pdftoppm", "pdftohtml"})
        if (QStandardPaths::findExecutable(QString::fromLatin1(tool)).isEmpty())
            return QString::fromLatin1(tool);
    return {};
}

std::vector<PageSize> pageSizes(const QString& path) {
    std::vector<PageSize> sizes;
    static const QRegularExpression line{
        QStringLiteral(R"(Page +\d+ size: +([\d.]+) x ([\d.]+) pts)")};
    auto found = line.globalMatch(
        run(QStringLiteral("pdfinfo"), {QStringLiteral("-f"), QStringLiteral("1"),
                                        QStringLiteral("-l"), QStringLiteral("9999"), path}));
    while (found.hasNext()) {
        const auto m = found.next();
        sizes.push_back({m.captured(1).toDouble(), m.captured(2).toDouble()});
    }
    return sizes;
}

QString documentTitle(const QString& path) {
    static const QRegularExpression line{QStringLiteral(R"(Title: +(.*))")};
    return line.match(run(QStringLiteral("pdfinfo"), {path})).captured(1).trimmed();
}

QString normalised(const QString& text) {
    // "4¼" is set for "4 1/4"; NFKC would make 41/4 of it.
    static const std::map<QChar, QString> fractions{{QChar{0x00BC}, "1/4"}, {QChar{0x00BD}, "1/2"},
                                                    {QChar{0x00BE}, "3/4"}, {QChar{0x215B}, "1/8"},
                                                    {QChar{0x215C}, "3/8"}, {QChar{0x215D}, "5/8"},
                                                    {QChar{0x215E}, "7/8"}};
    QString spelt;
    for (const QChar c : text)
        if (const auto known = fractions.find(c); known != fractions.end())
            spelt += (!spelt.isEmpty() && spelt.back().isDigit() ? " " : "") + known->second;
        else
            spelt += c;
    QString out;
    for (const QChar c : spelt.normalized(QString::NormalizationForm_KC))
        if (c.category() != QChar::Other_Format)
            out += c;
    return out.simplified();
}

std::vector<QString> pageTexts(const QString& path) {
    std::vector<QString> pages;
    QStringList raw =
        run(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), path, QStringLiteral("-")})
            .split(QChar{'\f'});
    if (!raw.isEmpty() && raw.back().trimmed().isEmpty())
        raw.removeLast();
    for (const QString& page : raw)
        pages.push_back(normalised(page));
    return pages;
}

std::vector<FontLine> fonts(const QString& path) {
    std::vector<FontLine> out;
    const QStringList lines =
        run(QStringLiteral("pdffonts"), {path}).split(QChar{'\n'}, Qt::SkipEmptyParts);
    for (qsizetype i = 2; i < lines.size(); ++i) { // two lines of headings
        const QStringList words = lines[i].simplified().split(QChar{' '});
        // … emb sub uni object generation
        out.push_back(
            {words.front(), words.size() > 5 && words[words.size() - 5] == QLatin1String("yes")});
    }
    return out;
}

std::vector<TextLine> textLines(const QString& path) {
    constexpr double kZoom = 3; // the most it takes; places are whole pixels, thirds of a point
    QXmlStreamReader xml{run(QStringLiteral("pdftohtml"),
                             {QStringLiteral("-xml"), QStringLiteral("-i"), QStringLiteral("-zoom"),
                              QString::number(kZoom), QStringLiteral("-stdout"), path})};
    std::vector<TextLine> lines;
    std::map<QString, double> sizes;
    int page = -1;
    while (!xml.atEnd()) {
        xml.readNext();
        if (!xml.isStartElement())
            continue;
        const auto attributes = xml.attributes();
        const auto number = [&](const char* name) {
            return attributes.value(QLatin1String(name)).toDouble() / kZoom;
        };
        if (xml.name() == QLatin1String("page")) {
            ++page;
        } else if (xml.name() == QLatin1String("fontspec")) {
            sizes[attributes.value(QLatin1String("id")).toString()] = number("size");
        } else if (xml.name() == QLatin1String("text")) {
            TextLine line{page,
                          {number("left"), number("top"), number("width"), number("height")},
                          sizes[attributes.value(QLatin1String("font")).toString()],
                          true,
                          {}};
            for (int bold = 0; !(xml.readNext() == QXmlStreamReader::EndElement &&
                                 xml.name() == QLatin1String("text"));) {
                if (xml.atEnd())
                    break;
                if (xml.name() == QLatin1String("b"))
                    bold += xml.isStartElement() ? 1 : -1;
                if (!xml.isCharacters())
                    continue;
                line.text += xml.text();
                line.bold = line.bold && (bold > 0 || xml.text().trimmed().isEmpty());
            }
            line.text = normalised(line.text);
            if (!line.text.isEmpty() && line.at.width() > 0)
                lines.push_back(std::move(line));
        }
    }
    return lines;
}

std::vector<QImage> pictures(const QString& path, int dotsPerInch, int last) {
    const QTemporaryDir dir;
    run(QStringLiteral("pdftoppm"),
        {QStringLiteral("-gray"), QStringLiteral("-r"), QString::number(dotsPerInch),
         QStringLiteral("-l"), QString::number(last), path, dir.filePath(QStringLiteral("p"))});
    std::vector<QImage> out;
    for (const QString& name : QDir{dir.path()}.entryList(QDir::Files, QDir::Name))
        out.emplace_back(dir.filePath(name));
    return out;
}

namespace {

/// The content streams, unpacked.
std::vector<QByteArray> streams(const QByteArray& file) {
    std::vector<QByteArray> out;
    for (qsizetype at = file.indexOf("stream\n"); at >= 0; at = file.indexOf("stream\n", at + 1)) {
        const QByteArray dictionary =
            file.mid(file.lastIndexOf("obj", at), at - file.lastIndexOf("obj", at));
        if (file.mid(at - 3, 3) == "end" || !dictionary.contains("/FlateDecode"))
            continue;
        const qsizetype from = at + 7, to = file.indexOf("endstream", from);
        // qUncompress wants the expected length in front; any will do.
        out.push_back(qUncompress(QByteArray::fromHex("00010000") + file.mid(from, to - from)));
    }
    return out;
}

} // namespace

int missingGlyphs(const QByteArray& file) {
    int missing = 0;
    static const QRegularExpression shown{QStringLiteral("<([0-9a-fA-F]+)>")};
    for (const QByteArray& content : streams(file)) {
        if (!content.contains("BT") || !content.contains("Tj"))
            continue;
        auto strings = shown.globalMatch(QString::fromLatin1(content));
        while (strings.hasNext()) {
            const QString hex = strings.next().captured(1);
            for (qsizetype i = 0; i + 4 <= hex.size(); i += 4)
                missing += QStringView{hex}.mid(i, 4) == QLatin1String("0000");
        }
    }
    return missing;
}

int coloursIn(const QByteArray& file) {
    int colours = 0;
    // Three components and an operator that sets them (ISO 32000-1, 8.6.8).
    static const QRegularExpression set{
        QStringLiteral(R"(([\d.]+) ([\d.]+) ([\d.]+) (?:rg|RG|sc|SC|scn|SCN)\b)")};
    for (const QByteArray& content : streams(file)) {
        auto found = set.globalMatch(QString::fromLatin1(content));
        while (found.hasNext()) {
            const auto m = found.next();
            colours += m.captured(1) != m.captured(2) || m.captured(2) != m.captured(3);
        }
    }
    return colours;
}

} // namespace bastewright::pdf
