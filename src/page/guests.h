#pragma once

#include <QByteArray>
#include <QHash>
#include <QList>
#include <QString>
#include <QStringList>

#include <cstdint>

namespace bastewright::page {

/// Who may follow: everybody who has given the code shown on the tablet gets a key of their own,
/// good until the page is switched off or a new code is made. Nothing of it is kept on disk.
class Guests {
public:
    static constexpr int kMost = 24; ///< devices; a further one takes the place of the oldest

    Guests() { renew(); }

    /// Eight of thirty letters and figures that are not mistaken for each other, from the system's
    /// generator: 39 bits. Shown in two groups: "K7MX-2PQD".
    const QString& code() const { return code_; }
    /// Makes a new code; all keys lose their worth.
    void renew();

    /// A key for a device that gave the code (case, dash and spaces do not matter), else empty.
    QByteArray join(const QString& code);
    bool knows(const QByteArray& key) const;
    qsizetype count() const { return keys_.size(); }

    /// The device of this key has looked at the table as `who` (empty: it has not chosen yet).
    void looked(const QByteArray& key, const QString& who, std::int64_t nowMs);
    /// Who follows on a phone: the names of devices that have looked within `kFollowsMs`, sorted.
    QStringList following(std::int64_t nowMs) const;
    static constexpr std::int64_t kFollowsMs = 45'000; ///< twice what a phone waits, and some

private:
    struct Looked {
        QString who;
        std::int64_t atMs = 0;
    };
    QString code_;
    QList<QByteArray> keys_;
    QHash<QByteArray, Looked> looked_;
};

} // namespace bastewright::page
