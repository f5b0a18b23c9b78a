#pragma once

#include "page/page_server.h"

#include <QtQmlIntegration>

/// The page for guests' phones as the host handles it: switched on and off, at which address, and
/// what phones need to find it. Off at every start of the program.
class PhonePage : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the application")
    Q_PROPERTY(bool on READ isOn NOTIFY changed)
    Q_PROPERTY(QStringList addresses READ addresses NOTIFY changed)
    Q_PROPERTY(QString address READ address NOTIFY changed)
    Q_PROPERTY(QString link READ link NOTIFY changed) ///< to type
    Q_PROPERTY(QString code READ code NOTIFY changed) ///< to type there
    Q_PROPERTY(QString scan READ scan NOTIFY changed) ///< both, for the picture
    Q_PROPERTY(int guests READ guests NOTIFY changed)
    /// Who follows at this moment: "Ada, Dot".
    Q_PROPERTY(QString following READ following NOTIFY changed)
    Q_PROPERTY(QString problem READ problem NOTIFY changed)

public:
    explicit PhonePage(LiveController* live, QObject* parent = nullptr);

    bool isOn() const { return server_.isOpen(); }
    /// Where this machine can be reached: its networks first, itself alone last.
    QStringList addresses() const { return addresses_; }
    QString address() const { return address_; }
    QString link() const;
    QString code() const { return server_.guests().code(); }
    QString scan() const;
    int guests() const { return int(server_.guests().count()); }
    QString following() const { return server_.following().join(QStringLiteral(", ")); }
    QString problem() const { return problem_; }

    /// Looks again which networks there are.
    Q_INVOKABLE void look();
    Q_INVOKABLE void setOn(bool on);
    /// Answers there instead; those who follow have to scan again.
    Q_INVOKABLE void choose(const QString& address);
    Q_INVOKABLE void newCode();

signals:
    void changed();

private:
    bastewright::page::PageServer server_;
    QStringList addresses_;
    QString address_, problem_;
};
