#include "page/guests.h"

#include <QRandomGenerator>

namespace bastewright::page {
namespace {

// No 0 and O, no 1, I and L, no U beside V.
constexpr QLatin1StringView kLetters{"23456789ABCDEFGHJKMNPQRSTVWXYZ"};
constexpr int kLength = 8, kGroup = 4;
static_assert(kLetters.size() == 30);

QByteArray plain(const QString& code) {
    QByteArray out;
    const QString upper = code.toUpper();
    for (const QChar c : upper)
        if (c.isLetterOrNumber())
            out += c.toLatin1(); // 0 for what is not Latin, which no code holds
    return out;
}

// Takes as long for a code that is nearly right as for one that is not.
bool same(const QByteArray& a, const QByteArray& b) {
    if (a.size() != b.size())
        return false;
    int different = 0;
    for (qsizetype i = 0; i < a.size(); ++i)
        different |= a[i] ^ b[i];
    return different == 0;
}

} // namespace

void Guests::renew() {
    code_.clear();
    keys_.clear();
    looked_.clear();
    for (int i = 0; i < kLength; ++i) {
        if (i == kGroup)
            code_ += QLatin1Char('-');
        code_ += QLatin1Char(kLetters[QRandomGenerator::system()->bounded(int(kLetters.size()))]);
    }
}

QByteArray Guests::join(const QString& code) {
    if (!same(plain(code), plain(code_)))
        return {};
    quint32 random[4];
    QRandomGenerator::system()->fillRange(random);
    auto key = QByteArray{reinterpret_cast<const char*>(random), sizeof random}.toHex();
    if (keys_.size() >= kMost)
        looked_.remove(keys_.takeFirst());
    keys_ << key;
    return key;
}

bool Guests::knows(const QByteArray& key) const {
    bool known = false;
    for (const auto& k : keys_)
        known |= same(k, key);
    return known;
}

void Guests::looked(const QByteArray& key, const QString& who, std::int64_t nowMs) {
    looked_[key] = {who, nowMs};
}

QStringList Guests::following(std::int64_t nowMs) const {
    QStringList out;
    for (const auto& look : looked_)
        if (!look.who.isEmpty() && nowMs - look.atMs <= kFollowsMs && !out.contains(look.who))
            out << look.who;
    out.sort();
    return out;
}

} // namespace bastewright::page
