#include "page/http_request.h"

#include <gtest/gtest.h>

#include <random>

namespace bastewright::page {
namespace {

std::string head(const std::string& line, const std::string& fields = "Host: a:1\r\n") {
    return line + "\r\n" + fields + "\r\n";
}

TEST(HttpReader, ReadsWhatABrowserSends) {
    HttpReader reader;
    reader.feed("POST /tick HTTP/1.1\r\nHost: 127.0.0.1:52470\r\nContent-Type: application/json\r\n"
                "content-length:  4 \r\n\r\nbodyGET /table?after=7 HTTP/1.1\r\nHost: h\r\n\r\n");
    auto first = reader.take();
    ASSERT_TRUE(first);
    EXPECT_EQ(first->method, "POST");
    EXPECT_EQ(first->path, "/tick");
    EXPECT_EQ(first->field("content-type"), "application/json");
    EXPECT_EQ(first->body, "body");
    auto second = reader.take();
    ASSERT_TRUE(second);
    EXPECT_EQ(second->path, "/table");
    EXPECT_EQ(second->query, "after=7");
    EXPECT_FALSE(reader.take());
    EXPECT_FALSE(reader.waits());
}

TEST(HttpReader, ReadsByteByByte) {
    HttpReader reader;
    const std::string sent = head("POST /join HTTP/1.1", "Host: h\r\nContent-Length: 2\r\n") + "{}";
    for (std::size_t i = 0; i < sent.size(); ++i) {
        EXPECT_FALSE(reader.take()) << i;
        reader.feed({&sent[i], 1});
    }
    ASSERT_TRUE(reader.take());
}

struct Bad {
    const char* what;
    std::string sent;
    int status;
};

TEST(HttpReader, RefusesEverythingElse) {
    const Bad bad[] = {
        {"no version", head("GET /"), 400},
        {"HTTP/1.0", head("GET / HTTP/1.0"), 505},
        {"HTTP/2 in the clear", head("PRI * HTTP/2.0"), 400},
        {"another host's address", head("GET http://elsewhere/ HTTP/1.1"), 400},
        {"a space in the path", head("GET /a b HTTP/1.1"), 400},
        {"PUT", head("PUT / HTTP/1.1"), 405},
        {"an unknown method", head("BREW / HTTP/1.1"), 501},
        {"OPTIONS", head("OPTIONS / HTTP/1.1"), 501},
        {"no host", head("GET / HTTP/1.1", ""), 400},
        {"two hosts", head("GET / HTTP/1.1", "Host: a\r\nHost: b\r\n"), 400},
        {"a field without a colon", head("GET / HTTP/1.1", "Host a\r\n"), 400},
        {"a space before the colon", head("GET / HTTP/1.1", "Host : a\r\n"), 400},
        {"a folded line", head("GET / HTTP/1.1", "Host: a\r\n b\r\n"), 400},
        {"a nul", head(std::string{"GET /\0 HTTP/1.1", 15}), 400},
        {"chunks", head("POST / HTTP/1.1", "Host: a\r\nTransfer-Encoding: chunked\r\n"), 501},
        {"no length", head("POST / HTTP/1.1"), 411},
        {"a negative length", head("POST / HTTP/1.1", "Host: a\r\nContent-Length: -5\r\n"), 400},
        {"a length in words", head("POST / HTTP/1.1", "Host: a\r\nContent-Length: two\r\n"), 400},
        {"two lengths",
         head("POST / HTTP/1.1", "Host: a\r\nContent-Length: 1\r\nContent-Length: 2\r\n"), 400},
        {"a body too long", head("POST / HTTP/1.1", "Host: a\r\nContent-Length: 1025\r\n"), 413},
        {"a length beyond numbers",
         head("POST / HTTP/1.1", "Host: a\r\nContent-Length: 99999999999999999999999\r\n"), 413},
        {"a body to a GET", head("GET / HTTP/1.1", "Host: a\r\nContent-Length: 1\r\n"), 413},
        {"an expectation",
         head("POST / HTTP/1.1", "Host: a\r\nExpect: 100-continue\r\nContent-Length: 1\r\n"), 417},
        {"a head without end", "GET /" + std::string(9000, 'a'), 431},
        {"an empty line first", "\r\n\r\n", 400},
    };
    for (const auto& b : bad) {
        HttpReader reader;
        reader.feed(b.sent);
        EXPECT_FALSE(reader.take()) << b.what;
        EXPECT_EQ(reader.refusal(), b.status) << b.what;
    }
    std::string many = "Host: a\r\n";
    for (int i = 0; i < 70; ++i)
        many += "F" + std::to_string(i) + ": x\r\n";
    HttpReader reader;
    reader.feed(head("GET / HTTP/1.1", many));
    EXPECT_FALSE(reader.take());
    EXPECT_EQ(reader.refusal(), 431);
}

// However the network cuts it, the longest head is read and a longer one is refused.
TEST(HttpReader, HeadsMayBeSoLongAndNoLonger) {
    const auto headOf = [](std::size_t size) {
        const std::string before = "GET / HTTP/1.1\r\nHost: a\r\nPad: ";
        return before + std::string(size - before.size(), 'x') + "\r\n\r\n";
    };
    for (const std::size_t over : {0u, 1u, 2u, 3u, 4u, 5u})
        for (const std::size_t piece : {1u, 3u, 64u, 1021u, 1024u}) {
            const auto sent = headOf(HttpReader::kMostHead + over);
            HttpReader reader;
            std::optional<HttpRequest> read;
            for (std::size_t at = 0; at < sent.size() && !read; at += piece) {
                reader.feed(std::string_view{sent}.substr(at, piece));
                read = reader.take();
            }
            EXPECT_EQ(read.has_value(), over == 0) << over << " over in pieces of " << piece;
            EXPECT_EQ(reader.refusal(), over == 0 ? 0 : 431) << over << ", " << piece;
        }
}

// Whatever comes, the reader neither keeps more than its bounds nor goes on after a refusal.
TEST(HttpReader, TakesAnyBytesCalmly) {
    const std::uint64_t seed = std::random_device{}();
    std::mt19937_64 dice{seed};
    const std::string good =
        head("POST /tick HTTP/1.1", "Host: a\r\nContent-Length: 3\r\n") + "abc";
    int whole = 0, refused = 0;
    for (int n = 0; n < 20'000; ++n) {
        std::string sent = good + good;
        for (auto spoils = dice() % 4; spoils > 0; --spoils)
            sent[dice() % sent.size()] = static_cast<char>(dice());
        HttpReader reader;
        for (std::size_t at = 0; at < sent.size();) {
            const auto size = std::min(sent.size() - at, std::size_t(1 + dice() % 40));
            reader.feed(std::string_view{sent}.substr(at, size));
            at += size;
            while (const auto request = reader.take()) {
                ++whole;
                ASSERT_LE(request->body.size(), HttpReader::kMostBody) << "seed " << seed;
            }
        }
        if (reader.refusal() != 0) {
            ++refused;
            EXPECT_FALSE(reader.waits());
        }
    }
    EXPECT_GT(whole, 1000) << "seed " << seed;
    EXPECT_GT(refused, 1000) << "seed " << seed;
}

} // namespace
} // namespace bastewright::page
