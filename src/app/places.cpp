#include "app/places.h"

#include <QQuickItem>
#include <QSaveFile>
#include <QTextStream>

namespace bastewright::app {
namespace {

constexpr int kEveryMs = 150;

void list(const QQuickItem& item, QTextStream& out) {
    if (!item.isVisible() || item.opacity() == 0)
        return;
    const bool told = item.inherits("QQuickAbstractButton") || item.inherits("QQuickTextInput") ||
                      item.inherits("QQuickText");
    if (told && !item.objectName().isEmpty()) {
        const auto middle = item.mapToScene({item.width() / 2, item.height() / 2});
        out << item.objectName() << ' ' << qRound(middle.x()) << ' ' << qRound(middle.y()) << ' '
            << int(item.isEnabled()) << '\n';
    }
    for (const auto* child : item.childItems())
        list(*child, out);
}

} // namespace

Places::Places(QQuickWindow* window, QString file, QObject* parent)
    : QObject{parent}
    , window_{window}
    , file_{std::move(file)} {
    timer_.setInterval(kEveryMs);
    connect(&timer_, &QTimer::timeout, this, &Places::tell);
    timer_.start();
}

void Places::tell() {
    QString places;
    QTextStream out{&places};
    list(*window_->contentItem(), out);
    QSaveFile file{file_};
    if (file.open(QIODevice::WriteOnly)) {
        file.write(places.toUtf8());
        file.commit();
    }
}

} // namespace bastewright::app
