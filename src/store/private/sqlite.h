#pragma once

#include "measures/sentence.h"

#include <sqlite3.h>

#include <chrono>
#include <cstdint>
#include <memory>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>

/// A thin layer over SQLite's C interface: handles that close themselves, statements that bind and
/// read by type, transactions that roll back unless committed. Errors are exceptions in here; the
/// library turns them into sentences at its border.
namespace bastewright::sqlite {

/// A call that SQLite refused. what() is SQLite's own message; `code` is the primary result code.
class Error : public std::runtime_error {
public:
    Error(int extendedCode, const std::string& message)
        : std::runtime_error{message}
        , code{extendedCode & 0xff}
        , extended{extendedCode} {}
    int code, extended;

    bool damaged() const { return code == SQLITE_CORRUPT || code == SQLITE_NOTADB; }
};

class Statement;

class Database {
public:
    enum class Mode { readWrite, readOnly };
    /// Opens the file, making it where there is none (readWrite). Waits up to `busyMs` for others.
    Database(const std::string& path, Mode mode, int busyMs);

    sqlite3* handle() const { return handle_.get(); }
    void run(const std::string& sql);
    Statement prepare(std::string_view sql) const;
    std::int64_t number(std::string_view sql) const; ///< first column of the first row
    std::string text(std::string_view sql) const;
    /// Nothing where SQLite's own quick check finds the file sound, else its first complaint.
    std::optional<std::string> quickCheck() const;
    [[noreturn]] void fail(int code) const;

private:
    struct Close {
        void operator()(sqlite3* db) const { sqlite3_close_v2(db); }
    };
    std::unique_ptr<sqlite3, Close> handle_;
};

class Statement {
public:
    Statement(const Database& db, std::string_view sql);

    Statement& bind(int index, std::int64_t value);
    Statement& bind(int index, std::string_view value);
    template <class... Values>
    Statement& with(const Values&... values) {
        int index = 0;
        (bind(++index, values), ...);
        return *this;
    }
    bool step(); ///< true where there is a row
    void reset();

    std::int64_t number(int column) const;
    std::string text(int column) const;
    sqlite3_stmt* handle() const { return handle_.get(); }

private:
    struct Finalize {
        void operator()(sqlite3_stmt* s) const { sqlite3_finalize(s); }
    };
    const Database* db_;
    std::unique_ptr<sqlite3_stmt, Finalize> handle_;
};

/// BEGIN IMMEDIATE … COMMIT; rolled back where commit() was not reached.
class Transaction {
public:
    explicit Transaction(Database& db);
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    ~Transaction();
    void commit();

private:
    Database& db_;
    bool open_ = true;
};

/// "The job could not be saved: the disk is full. Free some space and try again." — `failed` is the
/// first half.
Sentence sentence(const Sentence& failed, const Error& error);

} // namespace bastewright::sqlite
