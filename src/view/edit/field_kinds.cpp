#include "view/edit/field_kinds.h"

#include "job/field_facts.h"
#include "language/said.h"
#include "view/edit/job_editor.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

using namespace bastewright;

QString name(Field::Kind kind) {
    switch (kind) {
    case Field::Kind::text:
        return QStringLiteral("text");
    case Field::Kind::length:
        return QStringLiteral("length");
    case Field::Kind::count:
        return QStringLiteral("count");
    case Field::Kind::number:
        return QStringLiteral("number");
    case Field::Kind::time:
        return QStringLiteral("time");
    case Field::Kind::choice:
        return QStringLiteral("choice");
    case Field::Kind::toggle:
        return QStringLiteral("toggle");
    case Field::Kind::action:
        return QStringLiteral("action");
    case Field::Kind::removal:
        return QStringLiteral("removal");
    }
    return {};
}

namespace fields {

const Field* find(const Fields& all, const QString& key) {
    const auto at = std::ranges::find(all, key, &Field::key);
    return at == all.end() ? nullptr : &*at;
}

QString take(const Fields& all, const QString& key, const QString& text, JobEditor& editor) {
    const Field* field = find(all, key);
    if (!field)
        return {};
    Session next = editor.session();
    const QString problem = field->take(next, text);
    return problem.isEmpty() ? editor.apply(field->label, std::move(next)) : problem;
}

void preview(const Fields& all, const QString& key, const QString& text, JobEditor& editor) {
    const Field* field = find(all, key);
    if (!field)
        return;
    Session next = editor.session();
    if (field->take(next, text).isEmpty())
        editor.setPreview(JobEditor::problemOf(next).isEmpty() ? std::optional{std::move(next)}
                                                               : std::nullopt);
}

QString labelOf(std::string_view path) {
    return language::said({Sentence::Kind::words, fieldFact(path).label});
}

namespace {

Field made(const Label& label, Field::Kind kind) {
    Field field;
    field.key = label.key;
    field.group = label.group;
    field.label = label.text;
    field.kind = kind;
    return field;
}

/// Sections read through the same accessors that write; the session is not changed by reading.
Session& readOnly(const Session& session) {
    return const_cast<Session&>(session);
}

QString sentence(const Label& label, const QString& text, const QString& form) {
    return form.arg(label.text, text);
}

QString takeLength(const Label& label, Unit unit, const QString& text, Length& into) {
    const auto read = parseLength(words::toCore(text), unit);
    if (!read)
        return sentence(label, text,
                        tr("%1: “%2” is not a length; enter one such as 12 1/2, 12.5 in, 317.5 "
                           "mm, 31.75 cm or 2 yd."));
    into = *read;
    return {};
}

QString takeTime(const Label& label, const QString& text, ClockTime begin, ClockTime& into) {
    const auto read = parseTypedClock(words::toCore(text), begin);
    if (!read)
        return sentence(label, text,
                        tr("%1: “%2” is not a time of day; enter one such as 13:00 or 1:00 pm."));
    into = *read;
    return {};
}

} // namespace

Field text(const Label& label, const At<std::string>& at) {
    auto field = made(label, Field::Kind::text);
    field.shown = [at](const Session& s) { return words::fromCore(*at(readOnly(s))); };
    field.take = [at](Session& s, const QString& typed) {
        *at(s) = words::toCore(typed.trimmed());
        return QString{};
    };
    return field;
}

Field length(const Label& label, Unit unit, const At<Length>& at) {
    auto field = made(label, Field::Kind::length);
    field.shown = [at, unit](const Session& s) { return words::length(*at(readOnly(s)), unit); };
    field.take = [at, unit, label](Session& s, const QString& typed) {
        return takeLength(label, unit, typed, *at(s));
    };
    return field;
}

Field cloth(const Label& label, Unit unit, const At<Length>& at) {
    auto field = length(label, unit, at);
    const bool yards = unit == Unit::inch;
    field.shown = [at, unit, yards](const Session& s) {
        const Length l = *at(readOnly(s));
        const Length step = yards ? Length::inch64ths(288) : Length::millimetres(10);
        if (l == Length{} || l.nm() % step.nm() != 0)
            return words::length(l, unit);
        return words::lengthToBuy(l, unit);
    };
    field.take = [at, unit, label, yards](Session& s, const QString& typed) {
        const std::string bare = words::toCore(typed + (yards ? " yd" : " m"));
        if (const auto read = parseLength(bare, unit)) {
            *at(s) = *read;
            return QString{};
        }
        return takeLength(label, unit, typed, *at(s));
    };
    return field;
}

Field optionalLength(const Label& label, Unit unit, const At<std::optional<Length>>& at) {
    auto field = made(label, Field::Kind::length);
    field.optional = true;
    field.shown = [at, unit](const Session& s) {
        const auto& value = *at(readOnly(s));
        return value ? words::length(*value, unit) : QString{};
    };
    field.take = [at, unit, label](Session& s, const QString& typed) {
        if (typed.trimmed().isEmpty()) {
            at(s)->reset();
            return QString{};
        }
        Length value;
        auto problem = takeLength(label, unit, typed, value);
        if (problem.isEmpty())
            *at(s) = value;
        return problem;
    };
    return field;
}

Field count(const Label& label, const At<int>& at) {
    auto field = made(label, Field::Kind::count);
    field.shown = [at](const Session& s) { return QString::number(*at(readOnly(s))); };
    field.take = [=](Session& s, const QString& typed) {
        bool ok = false;
        const int value = typed.trimmed().toInt(&ok);
        if (!ok)
            return sentence(label, typed,
                            tr("%1: “%2” is not a count; enter a whole number, such as 4."));
        *at(s) = value;
        return QString{};
    };
    return field;
}

Field number(const Label& label, const At<double>& at) {
    auto field = made(label, Field::Kind::number);
    field.shown = [at](const Session& s) {
        return QLocale{}.toString(*at(readOnly(s)), 'g', QLocale::FloatingPointShortest);
    };
    field.take = [=](Session& s, const QString& typed) {
        bool ok = false;
        const double value =
            QString{typed}.replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&ok);
        if (!ok)
            return sentence(label, typed, tr("%1: “%2” is not a number; enter one such as 1.2."));
        *at(s) = value;
        return QString{};
    };
    return field;
}

Field time(const Label& label, const At<ClockTime>& at, bool begins) {
    auto field = made(label, Field::Kind::time);
    field.shown = [at](const Session& s) { return words::clock(*at(readOnly(s))); };
    field.take = [at, label, begins](Session& s, const QString& typed) {
        return takeTime(label, typed, begins ? ClockTime{} : s.setting.start, *at(s));
    };
    return field;
}

Field optionalTime(const Label& label, const At<std::optional<ClockTime>>& at) {
    auto field = made(label, Field::Kind::time);
    field.optional = true;
    field.shown = [at](const Session& s) {
        const auto& value = *at(readOnly(s));
        return value ? words::clock(*value) : QString{};
    };
    field.take = [at, label](Session& s, const QString& typed) {
        if (typed.trimmed().isEmpty()) {
            at(s)->reset();
            return QString{};
        }
        ClockTime value;
        auto problem = takeTime(label, typed, s.setting.start, value);
        if (problem.isEmpty())
            *at(s) = value;
        return problem;
    };
    return field;
}

Field toggle(const Label& label, const At<bool>& at) {
    auto field = made(label, Field::Kind::toggle);
    field.choices = {tr("No"), tr("Yes")};
    field.shown = [at](const Session& s) { return *at(readOnly(s)) ? tr("Yes") : tr("No"); };
    field.take = [at](Session& s, const QString& typed) {
        *at(s) = typed == QLatin1String("1");
        return QString{};
    };
    return field;
}

Field choice(const Label& label, const QStringList& choices,
             const std::function<int(const Session&)>& get,
             const std::function<void(Session&, int)>& set) {
    auto field = made(label, Field::Kind::choice);
    field.choices = choices;
    field.shown = [choices, get](const Session& s) { return choices.value(get(s)); };
    field.take = [=](Session& s, const QString& index) {
        bool ok = false;
        const int i = index.toInt(&ok);
        if (!ok || i < 0 || i >= choices.size())
            return tr("%1: choose one of those shown.").arg(label.text);
        set(s, i);
        return QString{};
    };
    return field;
}

Field action(const Label& label, const std::function<void(Session&)>& act) {
    auto field = made(label, Field::Kind::action);
    field.shown = [](const Session&) { return QString{}; };
    field.take = [act](Session& s, const QString&) {
        act(s);
        return QString{};
    };
    return field;
}

Field removal(const Label& label, const std::function<void(Session&)>& act) {
    auto field = action(std::move(label), std::move(act));
    field.kind = Field::Kind::removal;
    return field;
}

} // namespace fields
