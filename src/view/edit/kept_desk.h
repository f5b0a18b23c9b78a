#pragma once

#include "store/library.h"
#include "view/base/table_rows.h"
#include "view/edit/job_editor.h"

#include <QObject>
#include <QtQmlIntegration>

#include <vector>

/// Rooms, people and boxes of supplies that the library keeps by name, offered to the quilt in
/// hand. A room or a box is kept once it has a name; a person only where somebody says so. What is
/// kept follows what is changed about it in the quilt in hand; hours, breaks and places belong to
/// the day and are not kept.
class KeptDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the workroom")
    /// Each with name, about (half a line), here (in the quilt in hand).
    Q_PROPERTY(TableRows* rooms READ rooms CONSTANT)
    Q_PROPERTY(TableRows* people READ people CONSTANT)
    Q_PROPERTY(TableRows* boxes READ boxes CONSTANT)
    /// The people of the quilt in hand are kept when they are done with in the guide.
    Q_PROPERTY(bool keepsPeople READ keepsPeople WRITE setKeepsPeople NOTIFY keepsPeopleChanged)
    /// How many of the people who are kept do not come.
    Q_PROPERTY(int away READ away NOTIFY awayChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)

public:
    enum Kind { Room, Person, Supplies };
    Q_ENUM(Kind)

    /// The library must live longer.
    KeptDesk(bastewright::Library* library, JobEditor* editor, QObject* parent = nullptr);

    /// Reads the library again.
    Q_INVOKABLE void refresh();
    /// Puts it into the quilt in hand; somebody who is there already leaves again.
    Q_INVOKABLE void use(Kind kind, const QString& name);
    /// Keeps somebody of the quilt in hand.
    Q_INVOKABLE void keepPerson(const QString& name);
    /// Everybody of the quilt in hand who has a name of their own.
    Q_INVOKABLE void keepEverybody();
    Q_INVOKABLE bool rename(Kind kind, const QString& from, const QString& to);
    Q_INVOKABLE void forget(Kind kind, const QString& name);
    /// Forgets somebody and takes them out of every quilt that has others to do the work; what was
    /// recorded at the table stays. Returns how many quilts were changed.
    Q_INVOKABLE int forgetEverywhere(const QString& name);
    Q_INVOKABLE bool isKept(Kind kind, const QString& name) const;
    Q_INVOKABLE void forgetProblem() { say({}); }

    /// What a new quilt begins with: the room and the box used last, and "Me" as they are kept.
    bastewright::Setting usual() const;

    TableRows* rooms() { return &rooms_; }
    TableRows* people() { return &people_; }
    TableRows* boxes() { return &boxes_; }
    bool keepsPeople() const { return keepsPeople_; }
    void setKeepsPeople(bool keeps);
    int away() const { return away_; }
    QString problem() const { return problem_; }

signals:
    void keepsPeopleChanged();
    void problemChanged();
    void awayChanged();
    /// Quilts other than the one in hand have changed.
    void quiltsChanged();

private:
    struct Thing {
        std::string name;
        bastewright::Setting setting; ///< holds it alone
    };
    const std::vector<Thing>& all(Kind kind) const { return kept_[std::size_t(kind)]; }
    void show();
    void follow();
    bool keep(Kind kind, const std::string& name, const bastewright::Setting& from);
    void say(const QString& problem);

    bastewright::Library* library_;
    JobEditor* editor_;
    std::vector<Thing> kept_[3];
    bastewright::Setting seen_;
    TableRows rooms_, people_, boxes_;
    bool keepsPeople_ = true;
    int away_ = 0;
    QString problem_;
};
