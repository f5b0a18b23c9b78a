#include "sheets/sheets.h"

#include "sheets/failure.h"
#include "sheets/file_name.h"
#include "sheets/pdf.h"
#include "sheets/words.h"

#include <QDir>
#include <QSaveFile>

#include <algorithm>
#include <array>

namespace bastewright {
namespace {

using sheets::failure;
using sheets::Text;

QString fileName(const Session& session, const QString& what, Paper paper) {
    return sheets::fileStem(session) + what + QLatin1Char('-') +
           QString::fromLatin1(name(paper).data(), qsizetype(name(paper).size())) +
           QStringLiteral(".pdf");
}

/// One sentence; empty where all went well.
QString write(const Session& session, const Plan& plan, const SheetOptions& options,
              const QString& path) {
    const SheetSet set{session, plan, options};
    const auto pdf = sheets::pdfOf(set, options);
    if (!pdf)
        return pdf.error();
    QSaveFile file{path};
    if (!file.open(QIODevice::WriteOnly) || file.write(*pdf) != pdf->size() || !file.flush() ||
        !file.commit())
        return Text::tr("%1 cannot be written: %2.").arg(path, file.errorString());
    return {};
}

} // namespace

const std::vector<SheetPart>& sheetParts() {
    static const std::vector<SheetPart> parts{
        {"passes", &SheetOptions::passes}, {"ribbons", &SheetOptions::ribbons},
        {"cards", &SheetOptions::cards},   {"labels", &SheetOptions::labels},
        {"record", &SheetOptions::record}, {"why", &SheetOptions::why}};
    return parts;
}

Paper usualPaper(const QLocale& locale) {
    static const std::array letter{QLocale::UnitedStates, QLocale::Canada,      QLocale::Mexico,
                                   QLocale::Belize,       QLocale::Chile,       QLocale::Colombia,
                                   QLocale::CostaRica,    QLocale::Guatemala,   QLocale::Nicaragua,
                                   QLocale::Panama,       QLocale::Philippines, QLocale::PuertoRico,
                                   QLocale::ElSalvador,   QLocale::Venezuela};
    return std::ranges::count(letter, locale.territory()) > 0 ? Paper::letter : Paper::a4;
}

std::string sheetsFileName(const Session& session, const SheetOptions& options) {
    return fileName(session, {}, options.paper).toStdString();
}

tl::expected<std::vector<std::string>, std::string> writeSheets(const Session& session,
                                                                const Plan& plan,
                                                                const std::string& folder,
                                                                const SheetOptions& options) {
    const QString place = QString::fromStdString(folder);
    if (plan.quilts.empty())
        return failure(Text::tr("There is no plan to print yet."));
    if (!QDir{}.mkpath(place))
        return failure(Text::tr("The folder %1 cannot be made.").arg(place));
    struct File {
        QString name;
        SheetOptions options;
    };
    std::vector<File> files;
    SheetOptions uncut = options;
    uncut.cards = false;
    if (uncut.lead || uncut.bring || uncut.helpers ||
        std::ranges::any_of(sheetParts(), [&](const SheetPart& p) { return uncut.*p.option; }))
        files.push_back({fileName(session, {}, options.paper), uncut});
    if (options.cards) {
        SheetOptions cards = options;
        cards.lead = cards.bring = cards.helpers = false;
        for (const SheetPart& part : sheetParts())
            cards.*part.option = false;
        cards.cards = true;
        files.push_back({fileName(session, QStringLiteral("-cards"), options.paper), cards});
    }
    if (files.empty())
        return failure(Text::tr("No sheet is chosen."));
    std::vector<std::string> written;
    for (const auto& file : files) {
        const QString path = QDir{place}.filePath(file.name);
        if (const QString problem = write(session, plan, file.options, path); !problem.isEmpty())
            return failure(problem);
        written.push_back(path.toStdString());
    }
    return written;
}

} // namespace bastewright
