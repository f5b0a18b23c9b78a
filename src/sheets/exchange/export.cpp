#include "sheets/exchange/export.h"

#include "plan/plan_json.h"
#include "sheets/exchange/calendar.h"
#include "sheets/exchange/csv.h"
#include "sheets/exchange/pass_pictures.h"
#include "sheets/file_name.h"
#include "sheets/words.h"

#include <QDir>
#include <QSaveFile>

namespace bastewright {

tl::expected<std::vector<std::string>, std::string>
writeExchange(const Session& session, const Plan& plan, const std::string& folder,
              std::chrono::year_month_day day, std::chrono::sys_seconds now) {
    using sheets::Text;
    const QDir place{QString::fromStdString(folder)};
    if (!place.mkpath(QStringLiteral(".")))
        return tl::make_unexpected(
            Text::tr("The folder %1 cannot be made.").arg(place.path()).toStdString());
    const QString stem = sheets::fileStem(session);
    const std::pair<QString, std::string> texts[] = {
        {QStringLiteral("plan.json"), writePlan(plan)},
        {QStringLiteral("bring.csv"), bringCsv(plan)},
        {QStringLiteral("crew.csv"), crewCsv(session, plan.unit)},
        {QStringLiteral("tasks.csv"), tasksCsv(session, plan)},
        {QStringLiteral("session.ics"), calendar(session, plan, day, now)},
    };
    std::vector<std::string> written;
    for (const auto& [name, text] : texts) {
        QSaveFile file{place.filePath(stem + QLatin1Char('-') + name)};
        const auto bytes = QByteArray::fromStdString(text);
        if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() ||
            !file.flush() || !file.commit())
            return tl::make_unexpected(Text::tr("%1 cannot be written: %2.")
                                           .arg(file.fileName(), file.errorString())
                                           .toStdString());
        written.push_back(file.fileName().toStdString());
    }
    for (const auto format : {PictureFormat::svg, PictureFormat::png}) {
        const auto pictures = writePassPictures(session, plan, folder, format);
        if (!pictures)
            return tl::make_unexpected(pictures.error());
        written.insert(written.end(), pictures->begin(), pictures->end());
    }
    return written;
}

} // namespace bastewright
