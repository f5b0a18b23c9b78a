#pragma once

#include "page/http_request.h"

#include <QObject>
#include <QTcpSocket>
#include <QTimer>

namespace bastewright::page {

/// One connection of a guest's browser: reads one request after the other, answers each before the
/// next is looked at, and ends where the browser dawdles or sends what is not accepted. Deletes
/// itself when the connection ends.
class Connection : public QObject {
    Q_OBJECT

public:
    static constexpr int kSlowMs = 10'000;           ///< most for sending the first request
    static constexpr int kIdleMs = 60'000;           ///< most from an answer to the end of the next
    static constexpr qint64 kMostUnsent = 1'000'000; ///< bytes of answers nobody has taken

    Connection(QTcpSocket* socket, QObject* parent);

    const std::string& address() const { return address_; }
    /// Answers the request in hand; `more` are further fields, each with its line end.
    void answer(int status, const QByteArray& type = {}, const QByteArray& body = {},
                const QByteArray& more = {});
    void answerJson(int status, const QJsonObject& body);
    /// Says no more after this answer.
    void closeAfter() { closing_ = true; }

signals:
    void requested(bastewright::page::Connection* by,
                   const bastewright::page::HttpRequest& request);
    void refused(bastewright::page::Connection* by, int status);

private:
    void read();

    QTcpSocket* socket_;
    std::string address_;
    HttpReader reader_;
    QTimer patience_;
    bool busy_ = false, closing_ = false;
};

} // namespace bastewright::page
