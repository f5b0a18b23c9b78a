#include "app/commands.h"

#include "app/plan_text.h"
#include "checker/checker.h"
#include "job/job_json.h"
#include "language/language.h"
#include "plan/as_written.h"
#include "plan/plan_json.h"
#include "session/checked_plan.h"
#include "sheets/exchange/export.h"
#include "sheets/sheets.h"

#include <QCommandLineParser>
#include <QDate>
#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include <algorithm>
#include <array>
#include <condition_variable>
#include <iostream>
#include <mutex>
#include <thread>

namespace bastewright::app {
namespace {

void printFindings(const Findings& findings) {
    for (const Finding& f : findings)
        std::cerr << findingText(f) << '\n';
}

/// What the checker found: where in the plan's file, what is wrong there, and what the rule asks.
void printBroken(const Findings& findings) {
    for (const Finding& f : findings)
        std::cerr << findingText(f) << " (" << f.subject << ": " << ruleInWords(f.subject) << ")\n";
}

int badInput(const std::string& sentence) {
    std::cerr << "stop: " << sentence << '\n';
    return kBadInput;
}

/// Reads a job or session; prints every problem. Nothing where one of them is a stop.
std::optional<Session> readJob(const QString& path) {
    SessionRead read = readSessionFile(path.toStdString());
    printFindings(read.problems);
    if (anyStop(read.problems))
        return {};
    return std::move(read.session);
}

/// Writes all of the text or nothing. A short text is only buffered by write(), and commit() says
/// nothing of a buffer that did not reach the disk: flush() does.
bool writeFile(const QString& path, const std::string& text) {
    QSaveFile file{path};
    const bool written = file.open(QIODevice::WriteOnly) &&
                         file.write(text.data(), static_cast<qint64>(text.size())) ==
                             static_cast<qint64>(text.size()) &&
                         file.flush() && file.commit();
    if (!written)
        std::cerr << "stop: The file " << path.toStdString()
                  << " could not be written: " << file.errorString().toStdString() << ".\n";
    return written;
}

/// Asks a search to stop after so many milliseconds, unless the limit is gone before.
class TimeLimit {
public:
    explicit TimeLimit(int milliseconds) {
        if (milliseconds > 0)
            watch_ = std::jthread{[this, milliseconds](std::stop_token gone) {
                std::unique_lock lock{mutex_};
                wake_.wait_for(lock, gone, std::chrono::milliseconds{milliseconds},
                               [] { return false; });
                stop_.request_stop();
            }};
    }
    std::stop_token token() const { return stop_.get_token(); }

private:
    std::stop_source stop_;
    std::mutex mutex_;
    std::condition_variable_any wake_;
    std::jthread watch_;
};

int plan(const QCommandLineParser& args) {
    int limit = 0;
    if (args.isSet("limit")) {
        bool number = false;
        limit = args.value("limit").toInt(&number);
        if (!number || limit < 1 || limit > 3'600'000)
            return badInput("--limit: '" + args.value("limit").toStdString() +
                            "' is not accepted; a number of milliseconds from 1 to 3600000 is.");
    }
    const auto session = readJob(args.positionalArguments().at(1));
    if (!session)
        return kBadInput;
    const TimeLimit timeLimit{limit};
    const Plan plan = checkedPlan(*session, {.help = true}, timeLimit.token());
    std::cout << (args.isSet("all") ? planText(*session, plan) : planSummary(*session, plan));
    if (args.isSet("json") && !writeFile(args.value("json"), writePlan(plan)))
        return kBadInput;
    return isGood(plan) ? kGood : kNoGoodPlan;
}

/// The session and its good plan; `code` is what to exit with where there is none.
struct Planned {
    Session session;
    Plan plan;
};
std::optional<Planned> planned(const QCommandLineParser& args, int& code) {
    auto session = readJob(args.positionalArguments().at(1));
    if (!session) {
        code = kBadInput;
        return {};
    }
    Plan plan = checkedPlan(*session);
    if (!isGood(plan)) {
        printFindings(plan.findings);
        code = kNoGoodPlan;
        return {};
    }
    return Planned{std::move(*session), std::move(plan)};
}

int told(const tl::expected<std::vector<std::string>, std::string>& written) {
    if (!written)
        return badInput(written.error());
    for (const std::string& path : *written)
        std::cout << path << '\n';
    return kGood;
}

/// "passes, ribbons, cards": what can be printed beside the set for an afternoon.
std::string partNames() {
    std::string out;
    for (const SheetPart& part : sheetParts())
        out += (out.empty() ? "" : ", ") + std::string{part.name};
    return out;
}

int sheets(const QCommandLineParser& args) {
    if (args.value("out").isEmpty())
        return badInput("--out: it is missing; a folder for the sheets is needed.");
    const QString paper = args.isSet("paper") ? args.value("paper").toLower()
                          : usualPaper(QLocale::system()) == Paper::letter ? "letter"
                                                                           : "a4";
    if (paper != "a4" && paper != "letter")
        return badInput("--paper: '" + paper.toStdString() + "' is not accepted; a4 or letter is.");
    const QString spoken = args.value("language");
    if (!language::all().contains(spoken, Qt::CaseInsensitive))
        return badInput("--language: '" + spoken.toStdString() + "' is not accepted; one of " +
                        language::all().join(", ").toStdString() + " is.");
    int code = kGood;
    const auto ready = planned(args, code);
    if (!ready)
        return code;
    language::speak(spoken);
    SheetOptions options;
    options.paper = paper == "a4" ? Paper::a4 : Paper::letter;
    options.colour = !args.isSet("gray");
    for (const QString& wanted : args.value("with").split(',', Qt::SkipEmptyParts)) {
        const std::string name = wanted.trimmed().toStdString();
        const auto part = std::ranges::find(sheetParts(), name, &SheetPart::name);
        if (part == sheetParts().end() && name != "all")
            return badInput("--with: '" + name + "' is not accepted; " + partNames() +
                            " or all is, several with commas between.");
        for (const SheetPart& one : sheetParts())
            if (name == "all" || name == one.name)
                options.*one.option = true;
    }
    return told(writeSheets(ready->session, ready->plan, args.value("out").toStdString(), options));
}

int exchange(const QCommandLineParser& args) {
    if (args.value("out").isEmpty())
        return badInput("--out: it is missing; a folder for the files is needed.");
    const QDateTime now = QDateTime::currentDateTime();
    const QDate day =
        args.isSet("day") ? QDate::fromString(args.value("day"), Qt::ISODate) : now.date();
    if (!day.isValid())
        return badInput("--day: '" + args.value("day").toStdString() +
                        "' is not accepted; a day such as 2026-12-05 is.");
    int code = kGood;
    const auto ready = planned(args, code);
    if (!ready)
        return code;
    using namespace std::chrono;
    return told(writeExchange(ready->session, ready->plan, args.value("out").toStdString(),
                              year{day.year()} / day.month() / day.day(),
                              sys_seconds{seconds{now.toSecsSinceEpoch()}}));
}

int check(const QCommandLineParser& args) {
    if (args.positionalArguments().size() != 3)
        return badInput("check: a job file and a plan file are needed.");
    const auto session = readJob(args.positionalArguments().at(1));
    if (!session)
        return kBadInput;
    const QString path = args.positionalArguments().at(2);
    QFile file{path};
    // Pipes and devices never end.
    if (!QFileInfo{path}.isFile() || !file.open(QIODevice::ReadOnly))
        return badInput("The plan file " + path.toStdString() + " could not be read.");
    // One byte more than the reader accepts, so that it says so.
    const std::string text = file.read(kMostPlanBytes + 1).toStdString();
    const PlanRead read = readPlan(text);
    printFindings(read.problems);
    if (!read.plan)
        return kBadInput;
    const Findings findings = checkPlan(*session, *read.plan);
    printBroken(findings);
    const Findings unlike = unlikeWritten(text, *read.plan);
    printFindings(unlike);
    if (anyStop(findings))
        return kNoGoodPlan;
    std::cout << "The plan keeps every rule that is checked"
              << (unlike.empty() ? ".\n" : "; its file says something else at the places above.\n");
    return kGood;
}

struct Command {
    QString name;
    QStringList options;
    int (*run)(const QCommandLineParser&);
};

const std::array<Command, 4>& commands() {
    static const std::array<Command, 4> all{{
        {"plan", {"json", "limit", "all"}, plan},
        {"sheets", {"out", "paper", "gray", "with", "language"}, sheets},
        {"export", {"out", "day"}, exchange},
        {"check", {}, check},
    }};
    return all;
}

int optionOfAnother(const Command& command, const QString& option) {
    const QString own = command.options.join(" or --");
    return badInput(QStringLiteral("--%1: %2 does not take it; %3.")
                        .arg(option, command.name,
                             own.isEmpty() ? QStringLiteral("it takes no option")
                                           : QStringLiteral("--%1 is accepted").arg(own))
                        .toStdString());
}

} // namespace

bool isCommand(const QStringList& arguments) {
    return !arguments.isEmpty() &&
           std::ranges::find(commands(), arguments.front(), &Command::name) != commands().end();
}

int runCommand(const QStringList& arguments) {
    QCommandLineParser args;
    args.addPositionalArgument("command", "plan, sheets, export or check");
    args.addPositionalArgument("job", "a job or session file");
    args.addOption({"all", "plan: everything, in as many lines as it takes."});
    args.addOption({"json", "plan: write the plan to this file too.", "file"});
    args.addOption({"limit", "plan: stop searching after so many milliseconds.", "ms"});
    args.addOption({"out", "sheets, export: the folder to write to.", "folder"});
    args.addOption({"paper", "sheets: a4 or letter; without it what is usual here.", "paper"});
    args.addOption({"gray", "sheets: shades of gray instead of colors."});
    args.addOption(
        {"with",
         QString::fromStdString("sheets: more sheets than the set for an afternoon, of " +
                                partNames() + ", or all."),
         "sheets"});
    args.addOption(
        {"language", "sheets: one of " + language::all().join(", ") + ".", "code", "en"});
    args.addOption({"day", "export: the day of the session, 2026-12-05.", "day"});
    const auto help = args.addHelpOption();
    if (!args.parse(QStringList{"bastewright"} + arguments))
        return badInput(args.errorText().toStdString());
    if (args.isSet(help)) {
        std::cout << args.helpText().toStdString();
        return kGood;
    }
    if (args.positionalArguments().size() < 2)
        return badInput(arguments.front().toStdString() + ": a job or session file is needed.");
    const auto command =
        std::ranges::find(commands(), args.positionalArguments().constFirst(), &Command::name);
    if (command == commands().end())
        return badInput("'" + args.positionalArguments().constFirst().toStdString() +
                        "' is not a command; options come after it.");
    if (command->name != "check" && args.positionalArguments().size() > 2)
        return badInput(command->name.toStdString() +
                        ": only one job or session file is accepted.");
    for (const QString& option : args.optionNames())
        if (!command->options.contains(option))
            return optionOfAnother(*command, option);
    return command->run(args);
}

} // namespace bastewright::app
