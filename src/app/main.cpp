#include "app/build_facts.h"
#include "app/commands.h"
#include "app/window.h"

#include <QGuiApplication>

#include <cstring>
#include <iostream>

namespace {

constexpr const char* kUsage =
    R"(Bastewright plans, prints and runs the basting of a quilt on small tables.

  bastewright [JOB]                                     the window
  bastewright plan JOB [--all] [--json FILE] [--limit MS]
                                                        a plan to read, and as a file
  bastewright sheets JOB --out DIR [--with passes,ribbons,cards,labels,record,why|all]
                     [--paper a4|letter] [--gray] [--language en|en-GB|de]
                                                        the printed sheets
  bastewright export JOB --out DIR [--day 2026-12-05]   files for other programs
  bastewright check JOB PLAN                            an independent check of a plan
  bastewright --self-test                               a walk through every screen, nothing kept
  bastewright --version | --help

JOB is a job or a session of several quilts. Exit status: 0 good; 1 no good plan, with the reason and
the smallest remedy; 2 bad input, naming the field.
)";

bool has(int argc, char** argv, const char* option) {
    for (int i = 1; i < argc; ++i)
        if (std::strcmp(argv[i], option) == 0)
            return true;
    return false;
}

int command(int argc, char** argv) {
    using namespace bastewright::app;
    // Sheets and pictures need fonts and painting, not a display.
    if (std::strcmp(argv[1], "sheets") == 0 || std::strcmp(argv[1], "export") == 0) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        const QGuiApplication application{argc, argv};
        return runCommand(application.arguments().mid(1));
    }
    const QCoreApplication application{argc, argv};
    return runCommand(application.arguments().mid(1));
}

int window(int argc, char** argv) {
    using namespace bastewright::app;
    prepareWindow();
    const QGuiApplication application{argc, argv};
    const QStringList arguments = application.arguments().mid(1);
    if (arguments.contains(QStringLiteral("--self-test")))
        return selfTest();
    if (arguments.contains(QStringLiteral("--picture-screens")))
        return pictureScreens(arguments);
    if (arguments.size() > 1 || arguments.value(0).startsWith(QLatin1Char('-'))) {
        std::cerr << "stop: '" << arguments.join(QLatin1Char(' ')).toStdString()
                  << "' is not accepted; one job or session file, or a command is.\n\n"
                  << kUsage;
        return kBadInput;
    }
    return runWindow(arguments.value(0));
}

} // namespace

int main(int argc, char** argv) {
    if (has(argc, argv, "--version")) {
        std::cout << bastewright::app::buildFacts();
        return 0;
    }
    const bool wantsCommand =
        argc > 1 && bastewright::app::isCommand({QString::fromLocal8Bit(argv[1])});
    if (!wantsCommand && has(argc, argv, "--help")) {
        std::cout << kUsage;
        return 0;
    }
    return wantsCommand ? command(argc, argv) : window(argc, argv);
}
