#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace bastewright::page {

/// One request as this page's own script sends it (RFC 9112, HTTP/1.1).
struct HttpRequest {
    std::string method;                        ///< "GET" or "POST"
    std::string path;                          ///< "/table", without the query
    std::string query;                         ///< after the "?", as sent
    std::map<std::string, std::string> fields; ///< names in small letters
    std::string body;

    std::string field(const std::string& name) const;
};

/// Reads requests from the bytes of one connection and takes nothing that this page does not send:
/// methods GET and POST, one Host, a body only with a length, no transfer codings, no continuation
/// lines, little of everything. Holds at most a head and a body's worth of bytes.
class HttpReader {
public:
    static constexpr std::size_t kMostHead = 8 * 1024; ///< request line and fields, without the end
    static constexpr std::size_t kMostBody = 1024;
    static constexpr std::size_t kMostFields = 64;

    /// Takes bytes as they come, `kMostBody` at once at most; in what pieces does not matter. After
    /// a refusal nothing more is taken.
    void feed(std::string_view bytes);
    /// The next whole request, or nothing yet.
    std::optional<HttpRequest> take();
    /// The status (RFC 9110) with which the connection has to be answered and closed; 0: none.
    int refusal() const { return refusal_; }
    /// A request has begun and is not whole yet.
    bool waits() const { return !buffer_.empty(); }

private:
    bool readHead(std::string_view head);
    bool readRequestLine(std::string_view line);
    bool readField(std::string_view line);
    bool checkFields();
    bool refuse(int status);

    std::string buffer_;
    std::size_t searched_ = 0; ///< no head ends before this
    HttpRequest request_;
    std::optional<std::size_t> bodySize_; ///< set once the head is read
    int refusal_ = 0;
};

} // namespace bastewright::page
