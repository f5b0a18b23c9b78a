#include "page/connection.h"

#include <QHostAddress>
#include <QJsonDocument>
#include <QJsonObject>

namespace bastewright::page {
namespace {

// Nothing from elsewhere, nothing inline, in nobody's frame, kept nowhere.
constexpr const char* kAlways =
    "Cache-Control: no-store\r\n"
    "Content-Security-Policy: default-src 'none'; script-src 'self'; style-src 'self';"
    " img-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none';"
    " frame-ancestors 'none'\r\n"
    "Cross-Origin-Resource-Policy: same-origin\r\n"
    "Referrer-Policy: no-referrer\r\n"
    "X-Content-Type-Options: nosniff\r\n";

// The reason's words mean nothing to a browser (RFC 9112, section 4).
QByteArray reason(int status) {
    return status < 300 ? "Good" : status < 500 ? "Refused" : "Not done";
}

} // namespace

Connection::Connection(QTcpSocket* socket, QObject* parent)
    : QObject{parent}
    , socket_{socket}
    , address_{socket->peerAddress().toString().toStdString()} {
    socket_->setParent(this);
    socket_->setReadBufferSize(HttpReader::kMostHead);
    patience_.setSingleShot(true);
    patience_.start(kSlowMs);
    connect(&patience_, &QTimer::timeout, this, [this] {
        if (!busy_)
            socket_->abort();
    });
    connect(socket_, &QTcpSocket::readyRead, this, &Connection::read);
    connect(socket_, &QTcpSocket::disconnected, this, &QObject::deleteLater);
}

void Connection::read() {
    // What follows a request waits, here or in the socket, until that one is answered.
    while (!busy_ && !closing_) {
        if (const auto request = reader_.take()) {
            busy_ = true;
            emit requested(this, *request);
        } else if (reader_.refusal() != 0) {
            closing_ = true;
            emit refused(this, reader_.refusal());
            answer(reader_.refusal());
        } else if (socket_->bytesAvailable() > 0) {
            const auto bytes = socket_->read(1024);
            reader_.feed({bytes.constData(), std::size_t(bytes.size())});
        } else {
            return;
        }
    }
}

void Connection::answerJson(int status, const QJsonObject& body) {
    answer(status, "application/json", QJsonDocument{body}.toJson(QJsonDocument::Compact));
}

void Connection::answer(int status, const QByteArray& type, const QByteArray& body,
                        const QByteArray& more) {
    QByteArray head = "HTTP/1.1 " + QByteArray::number(status) + ' ' + reason(status) + "\r\n";
    if (!type.isEmpty())
        head += "Content-Type: " + type + "\r\n";
    if (status != 204)
        head += "Content-Length: " + QByteArray::number(body.size()) + "\r\n";
    if (closing_)
        head += "Connection: close\r\n";
    socket_->write(head + kAlways + more + "\r\n" + body);
    busy_ = false;
    // Whoever asks and asks and takes no answer would fill the memory.
    if (socket_->bytesToWrite() > kMostUnsent) {
        closing_ = true;
        socket_->abort();
        return;
    }
    if (closing_) {
        socket_->disconnectFromHost();
        return;
    }
    patience_.start(reader_.waits() ? kSlowMs : kIdleMs);
    QMetaObject::invokeMethod(this, &Connection::read, Qt::QueuedConnection);
}

} // namespace bastewright::page
