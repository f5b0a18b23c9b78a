#include "view/base/comfort.h"

#include "language/language.h"
#include "language/said.h"

#include <algorithm>

namespace {
constexpr qreal kLeastDensity = 2, kMostDensity = 30;
constexpr qreal kNearest = 400, kFarthest = 2500; // millimetres
constexpr qreal kSmallest = 0.8, kLargest = 2.0;
} // namespace

Comfort::Comfort(const QString& file, qreal reportedDensity, QObject* parent)
    : QObject{parent}
    , density_{std::clamp(reportedDensity, kLeastDensity, kMostDensity)} {
    if (file.isEmpty())
        return;
    kept_ = std::make_unique<QSettings>(file, QSettings::IniFormat);
    const auto number = [this](const char* key, qreal fallback, qreal least, qreal most) {
        bool ok = false;
        const qreal value = kept_->value(QLatin1String(key)).toDouble(&ok);
        return ok ? std::clamp(value, least, most) : fallback;
    };
    density_ = number("density", density_, kLeastDensity, kMostDensity);
    distance_ = number("distance", distance_, kNearest, kFarthest);
    textScale_ = number("textScale", textScale_, kSmallest, kLargest);
    dark_ = kept_->value(QStringLiteral("dark"), false).toBool();
    highContrast_ = kept_->value(QStringLiteral("highContrast"), false).toBool();
    faceToFace_ = kept_->value(QStringLiteral("faceToFace"), false).toBool();
    turn_ = int(number("turn", 0, 0, 3));
    bastewright::language::speak(
        kept_->value(QStringLiteral("language"), bastewright::language::ofSystem()).toString());
}

void Comfort::keep(const QString& key, const QVariant& value) {
    if (kept_)
        kept_->setValue(key, value);
    emit changed();
}

void Comfort::setDensity(qreal density) {
    density_ = std::clamp(density, kLeastDensity, kMostDensity);
    keep(QStringLiteral("density"), density_);
}

void Comfort::setDistance(qreal millimetres) {
    distance_ = std::clamp(millimetres, kNearest, kFarthest);
    keep(QStringLiteral("distance"), distance_);
}

void Comfort::setTextScale(qreal scale) {
    textScale_ = std::clamp(scale, kSmallest, kLargest);
    keep(QStringLiteral("textScale"), textScale_);
}

void Comfort::setDark(bool dark) {
    dark_ = dark;
    keep(QStringLiteral("dark"), dark_);
}

void Comfort::setHighContrast(bool on) {
    highContrast_ = on;
    keep(QStringLiteral("highContrast"), highContrast_);
}

void Comfort::setTurn(int turn) {
    turn_ = ((turn % 4) + 4) % 4;
    keep(QStringLiteral("turn"), turn_);
}

QString Comfort::language() const {
    return bastewright::language::spoken();
}

void Comfort::setLanguage(const QString& code) {
    if (code == language())
        return;
    bastewright::language::speak(code);
    keep(QStringLiteral("language"), language());
    emit languageChanged();
}

QStringList Comfort::languages() const {
    return bastewright::language::all();
}

bool Comfort::twelveHours() const {
    return bastewright::language::hasTwelveHours();
}

QString Comfort::languageName(const QString& code) const {
    return bastewright::language::ownName(code);
}

void Comfort::setFaceToFace(bool on) {
    faceToFace_ = on;
    keep(QStringLiteral("faceToFace"), faceToFace_);
}
