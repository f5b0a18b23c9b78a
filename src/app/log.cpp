#include "app/log.h"

#include <QDir>
#include <spdlog/sinks/null_sink.h>
#include <spdlog/sinks/rotating_file_sink.h>
#include <spdlog/spdlog.h>

namespace bastewright::app {

QString logFolder() {
    const QString set = qEnvironmentVariable("XDG_STATE_HOME");
    const QString base = QDir::isAbsolutePath(set) ? set : QDir::home().filePath(".local/state");
    return QDir{base}.filePath(QStringLiteral("bastewright"));
}

void keepLog(const QString& folder) {
    constexpr std::size_t kSize = 200'000, kOlder = 2;
    try {
        QDir{}.mkpath(folder);
        const auto file = QDir{folder}.filePath(QStringLiteral("bastewright.log")).toStdString();
        spdlog::set_default_logger(std::make_shared<spdlog::logger>(
            "", std::make_shared<spdlog::sinks::rotating_file_sink_mt>(file, kSize, kOlder)));
        spdlog::flush_on(spdlog::level::info);
    } catch (const spdlog::spdlog_ex&) {
        spdlog::set_default_logger(
            std::make_shared<spdlog::logger>("", std::make_shared<spdlog::sinks::null_sink_mt>()));
    }
}

} // namespace bastewright::app
