#include "page/http_request.h"

#include <algorithm>
#include <charconv>

namespace bastewright::page {
namespace {

constexpr std::string_view kEnd = "\r\n", kHeadEnd = "\r\n\r\n";

// RFC 9110, 5.6.2: what names and methods are made of.
bool isToken(std::string_view text) {
    constexpr std::string_view marks = "!#$%&'*+-.^_`|~";
    return !text.empty() && std::ranges::all_of(text, [&](char c) {
        return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') ||
               marks.find(c) != marks.npos;
    });
}

bool isPlain(std::string_view text) {
    return std::ranges::all_of(text, [](char c) { return c == '\t' || (c >= ' ' && c != 0x7f); });
}

std::string small(std::string_view text) {
    std::string out{text};
    for (char& c : out)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return out;
}

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == text.npos)
        return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

} // namespace

std::string HttpRequest::field(const std::string& name) const {
    const auto at = fields.find(name);
    return at == fields.end() ? std::string{} : at->second;
}

bool HttpReader::refuse(int status) {
    refusal_ = status;
    buffer_.clear();
    return false;
}

void HttpReader::feed(std::string_view bytes) {
    if (refusal_ != 0)
        return;
    if (buffer_.size() + bytes.size() > kMostHead + kHeadEnd.size() + kMostBody) {
        refuse(bodySize_ ? 413 : 431);
        return;
    }
    buffer_ += bytes;
}

std::optional<HttpRequest> HttpReader::take() {
    if (refusal_ != 0)
        return {};
    if (!bodySize_) {
        const auto end = buffer_.find(kHeadEnd, searched_);
        if (end == buffer_.npos) {
            // Where single bytes trickle in, each is looked at once.
            searched_ = buffer_.size() - std::min(buffer_.size(), kHeadEnd.size() - 1);
            // The longest head may be there, and its end in part.
            if (buffer_.size() >= kMostHead + kHeadEnd.size())
                refuse(431);
            return {};
        }
        searched_ = 0;
        if (end > kMostHead) {
            refuse(431);
            return {};
        }
        request_ = {};
        if (!readHead(std::string_view{buffer_}.substr(0, end)))
            return {};
        buffer_.erase(0, end + kHeadEnd.size());
    }
    if (buffer_.size() < *bodySize_)
        return {};
    request_.body = buffer_.substr(0, *bodySize_);
    buffer_.erase(0, *bodySize_);
    bodySize_.reset();
    return std::move(request_);
}

bool HttpReader::readHead(std::string_view head) {
    bool first = true;
    while (!head.empty()) {
        const auto end = std::min(head.find(kEnd), head.size());
        const auto line = head.substr(0, end);
        head.remove_prefix(std::min(end + kEnd.size(), head.size()));
        if (!(first ? readRequestLine(line) : readField(line)))
            return false;
        first = false;
    }
    return first ? refuse(400) : checkFields();
}

bool HttpReader::readRequestLine(std::string_view line) {
    const auto one = line.find(' '), two = line.rfind(' ');
    if (one == line.npos || one == two || !isPlain(line))
        return refuse(400);
    const auto method = line.substr(0, one), target = line.substr(one + 1, two - one - 1),
               version = line.substr(two + 1);
    if (!isToken(method) || target.find(' ') != target.npos || !target.starts_with('/'))
        return refuse(400);
    if (!version.starts_with("HTTP/"))
        return refuse(400);
    if (version != "HTTP/1.1")
        return refuse(505);
    if (method != "GET" && method != "POST")
        return refuse(method == "HEAD" || method == "PUT" || method == "DELETE" ? 405 : 501);
    const auto question = target.find('?');
    request_.method = method;
    request_.path = target.substr(0, question);
    if (question != target.npos)
        request_.query = target.substr(question + 1);
    return true;
}

bool HttpReader::readField(std::string_view line) {
    const auto colon = line.find(':');
    if (colon == line.npos || !isToken(line.substr(0, colon)) || !isPlain(line))
        return refuse(400);
    if (request_.fields.size() >= kMostFields)
        return refuse(431);
    const auto name = small(line.substr(0, colon));
    const auto value = trimmed(line.substr(colon + 1));
    const auto [at, isNew] = request_.fields.emplace(name, value);
    if (isNew)
        return true;
    // Two lengths or hosts are how one request is smuggled into another.
    if (name == "host" || name == "content-length" || name == "authorization")
        return refuse(400);
    at->second += ", " + std::string{value};
    return true;
}

bool HttpReader::checkFields() {
    if (request_.field("host").empty())
        return refuse(400);
    if (request_.fields.contains("transfer-encoding"))
        return refuse(501);
    if (request_.fields.contains("expect"))
        return refuse(417);
    std::size_t size = 0;
    if (request_.fields.contains("content-length")) {
        const auto text = request_.field("content-length");
        const auto [end, failed] = std::from_chars(text.data(), text.data() + text.size(), size);
        if (failed == std::errc::result_out_of_range)
            return refuse(413);
        if (failed != std::errc{} || end != text.data() + text.size())
            return refuse(400);
    } else if (request_.method == "POST") {
        return refuse(411);
    }
    if (size > kMostBody || (size > 0 && request_.method == "GET"))
        return refuse(413);
    bodySize_ = size;
    return true;
}

} // namespace bastewright::page
