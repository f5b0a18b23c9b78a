#include "plan/plan_json.h"

#include "plan/finding_fields.h"
#include "plan/sentences.h"

#include <map>

namespace bastewright {
namespace {

using namespace plan_limits;

constexpr std::string_view kFormat = "bastewright-plan";
constexpr int kVersion = 1;
constexpr std::array kFormatWords{Word{kFormat, 0}};

constexpr std::array kHelpWords{
    Word{"helper", Help::Kind::helper},           Word{"table", Help::Kind::table},
    Word{"off-the-wall", Help::Kind::offTheWall}, Word{"iron", Help::Kind::iron},
    Word{"hour-longer", Help::Kind::hourLonger},  Word{"any-start", Help::Kind::anyStart},
    Word{"whole-time", Help::Kind::wholeTime},    Word{"fewest-points", Help::Kind::fewestPoints}};

/// Task kinds by the names plan.h gives them.
constexpr std::size_t kKinds = static_cast<std::size_t>(TaskKind::handOver) + 1;
const std::array<Word<TaskKind>, kKinds>& kindWords() {
    static const auto kWords = [] {
        std::array<Word<TaskKind>, kKinds> out;
        for (std::size_t i = 0; i < kKinds; ++i) {
            const auto kind = static_cast<TaskKind>(i);
            out[i] = {name(kind), kind};
        }
        return out;
    }();
    return kWords;
}

template <class Fields, class T>
void taskFields(Fields& f, T& task) {
    f.require({"id", "kind", "job", "pass", "people", "start", "end"});
    f.text("id", task.id);
    f.word("kind", task.kind, kindWords());
    f.count("job", task.job, kCount);
    f.count("pass", task.pass, kCount);
    f.text("zone", task.zone);
    f.texts("people", task.people, kList);
    f.list("places", task.places, kList,
           [](Fields& p, auto& place) { standingPlaceFields(p, place); });
    f.seconds("start", task.start, kSeconds);
    f.seconds("end", task.end, kSeconds);
    f.texts("after", task.after, kList);
}

template <class Fields, class P>
void sharedFields(Fields& f, P& plan) {
    f.require({"tasks", "finish"});
    f.list("tasks", plan.tasks, kTasks, [](Fields& t, auto& task) { taskFields(t, task); });
    f.list("supplies", plan.supplies, kList,
           [](Fields& s, auto& supply) { supplyFields(s, supply); });
    f.list("help", plan.help, kList, [](Fields& h, auto& help) {
        h.word("kind", help.kind, kHelpWords);
        h.text("change", help.change, kText);
        h.seconds("saved", help.saved, kSeconds);
        h.count("passes_saved", help.passesSaved, kCount);
    });
    f.list("breaks", plan.breaks, kList, [](Fields& b, auto& rest) {
        b.require({"start", "end"});
        b.seconds("start", rest.start, kSeconds);
        b.seconds("end", rest.end, kSeconds);
        b.flag("proposed", rest.proposed);
        b.texts("people", rest.people, kList);
    });
    f.seconds("finish", plan.finish, kSeconds);
    f.object("finish_range", [&](Fields& r) {
        r.seconds("early", plan.range.early, kSeconds);
        r.seconds("middle", plan.range.middle, kSeconds);
        r.seconds("late", plan.range.late, kSeconds);
    });
    f.list("findings", plan.findings, kList,
           [](Fields& n, auto& finding) { findingFields(n, finding); });
}

/// The forms and values of everything composed, each once, in the order of the English texts. They
/// stand beside those texts, which stay readable, so that the plan can be said in another language
/// after reading.
Sentences composed(const Plan& plan) {
    std::map<std::string, Sentence> all;
    forEachSentence(plan, [&](const Sentence& s) {
        if (s.kind() != Sentence::Kind::name)
            all.emplace(s.english(), s);
    });
    Sentences out;
    for (const auto& [text, sentence] : all)
        out.push_back(sentence);
    return out;
}

/// Texts that read as one of these sentences become it; a text changed by hand stays as it is.
void recompose(Plan& plan, const Sentences& sentences) {
    std::map<std::string, const Sentence*> all;
    for (const Sentence& s : sentences)
        all.emplace(s.english(), &s);
    forEachSentence(plan, [&](Sentence& s) {
        if (const auto found = all.find(s.text()); found != all.end())
            s = *found->second;
    });
}

void readFields(FieldReader& reader, Plan& plan) {
    int format = 0, version = kVersion;
    reader.require({"format", "version"});
    reader.word("format", format, kFormatWords);
    reader.count("version", version, {kVersion, kVersion});
    if (!reader.sound()) // another kind of file has nothing that is worth a finding each
        return;
    reader.require({"unit"});
    reader.unit("unit", plan.unit);
    if (reader.has("quilts")) {
        reader.list("quilts", plan.quilts, limits::kQuilts,
                    [](FieldReader& r, QuiltPlan& quilt) { readQuiltPlan(r, quilt); });
        reader.object("bounds",
                      [&](FieldReader& b) { b.seconds("finish", plan.finishBound, kSeconds); });
    } else {
        readQuiltPlan(reader, plan.quilts.emplace_back(), &plan.finishBound);
    }
    sharedFields(reader, plan);
    Sentences sentences;
    reader.sentences("sentences", sentences, kList);
    recompose(plan, sentences);
    reader.finish();
}

PlanRead read(std::string_view text) {
    PlanRead out;
    const JsonLimits within{.bytes = kMostPlanBytes, .values = kValues};
    Findings parsing;
    const auto root = parseJson(text, within, parsing);
    if (!root) {
        out.problems = std::move(parsing);
        return out;
    }
    Problems problems;
    for (auto& f : parsing)
        problems.add(std::move(f));
    Plan plan;
    if (root->is_object()) {
        FieldReader reader{*root, "", problems};
        readFields(reader, plan);
    } else {
        problems.add(
            {Finding::Kind::input, Finding::Level::stop, "",
             core::says("The file is %1; a plan as an object in {} is accepted.", quoted(*root)),
             ""});
    }
    out.problems = std::move(problems).inOrder(*root);
    if (!anyStop(out.problems))
        out.plan = std::move(plan);
    return out;
}

} // namespace

std::string writePlan(const Plan& plan) {
    Json root = Json::object();
    FieldWriter writer{root, LengthStyle::numbersOnly};
    root["format"] = kFormat;
    root["version"] = kVersion;
    writer.unit("unit", plan.unit);
    if (plan.quilts.size() == 1) {
        writeQuiltPlan(writer, plan.quilts.front(), &plan.finishBound);
    } else {
        writer.list("quilts", plan.quilts, limits::kQuilts,
                    [](FieldWriter& w, const QuiltPlan& quilt) { writeQuiltPlan(w, quilt); });
        writer.object("bounds",
                      [&](FieldWriter& b) { b.seconds("finish", plan.finishBound, kSeconds); });
    }
    sharedFields(writer, plan);
    writer.sentences("sentences", composed(plan), kList);
    return printJson(root);
}

PlanRead readPlan(std::string_view text) {
    try {
        return read(text);
    } catch (const std::exception& error) { // memory; the readers themselves do not throw
        return {{},
                {{Finding::Kind::input, Finding::Level::stop, "",
                  core::says("The plan could not be read: %1.", error.what()), ""}}};
    }
}

} // namespace bastewright
