#include "view/base/surroundings.h"

Surroundings::Surroundings(const QString& file, QObject* parent)
    : QObject{parent} {
    if (file.isEmpty())
        return;
    kept_ = std::make_unique<QSettings>(file, QSettings::IniFormat);
    const auto read = [this](const char* key, bool& value) {
        value = kept_->value(QLatin1String(key), value).toBool();
    };
    read("asDevice", asDevice_);
    read("wholeScreen", wholeScreen_);
    read("edgeSign", edgeSign_);
    read("still", still_);
}

void Surroundings::keep(bool& value, const char* key, bool now) {
    if (value == now)
        return;
    value = now;
    if (kept_)
        kept_->setValue(QLatin1String(key), now);
    emit changed();
}

void Surroundings::setAsDevice(bool on) {
    keep(asDevice_, "asDevice", on);
}
void Surroundings::setWholeScreen(bool on) {
    keep(wholeScreen_, "wholeScreen", on);
}
void Surroundings::setEdgeSign(bool on) {
    keep(edgeSign_, "edgeSign", on);
}
void Surroundings::setStill(bool on) {
    keep(still_, "still", on);
}

void Surroundings::setDeviceDark(bool dark) {
    if (dark == deviceDark_)
        return;
    deviceDark_ = dark; // the device's own, so not kept here
    emit changed();
}

void Surroundings::setDeviceContrast(bool high) {
    if (high == deviceContrast_)
        return;
    deviceContrast_ = high;
    emit changed();
}
