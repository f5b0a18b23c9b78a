#include "store/private/sqlite.h"

namespace bastewright::sqlite {

Database::Database(const std::string& path, Mode mode, int busyMs) {
    sqlite3* opened = nullptr;
    const int flags = (mode == Mode::readOnly ? SQLITE_OPEN_READONLY
                                              : SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE) |
                      SQLITE_OPEN_EXRESCODE | SQLITE_OPEN_NOMUTEX;
    const int code = sqlite3_open_v2(path.c_str(), &opened, flags, nullptr);
    handle_.reset(opened); // a failed open still gives a handle that wants closing
    if (code != SQLITE_OK)
        fail(code);
    sqlite3_busy_timeout(opened, busyMs);
}

void Database::fail(int code) const {
    if (!handle_)
        throw Error{code, sqlite3_errstr(code)};
    const int extended = sqlite3_extended_errcode(handle_.get());
    throw Error{(extended & 0xff) == (code & 0xff) ? extended : code,
                sqlite3_errmsg(handle_.get())};
}

void Database::run(const std::string& sql) {
    const int code = sqlite3_exec(handle(), sql.c_str(), nullptr, nullptr, nullptr);
    if (code != SQLITE_OK)
        fail(code);
}

Statement Database::prepare(std::string_view sql) const {
    return Statement{*this, sql};
}

std::int64_t Database::number(std::string_view sql) const {
    auto s = prepare(sql);
    return s.step() ? s.number(0) : 0;
}

std::string Database::text(std::string_view sql) const {
    auto s = prepare(sql);
    return s.step() ? s.text(0) : std::string{};
}

std::optional<std::string> Database::quickCheck() const {
    const auto found = text("PRAGMA quick_check(1)");
    if (found == "ok")
        return {};
    return found;
}

Statement::Statement(const Database& db, std::string_view sql)
    : db_{&db} {
    sqlite3_stmt* made = nullptr;
    const int code =
        sqlite3_prepare_v2(db.handle(), sql.data(), static_cast<int>(sql.size()), &made, nullptr);
    handle_.reset(made);
    if (code != SQLITE_OK)
        db.fail(code);
}

Statement& Statement::bind(int index, std::int64_t value) {
    if (const int code = sqlite3_bind_int64(handle(), index, value); code != SQLITE_OK)
        db_->fail(code);
    return *this;
}

Statement& Statement::bind(int index, std::string_view value) {
    // An empty view may have no address, and no address would mean NULL.
    const int code = sqlite3_bind_text64(handle(), index, value.empty() ? "" : value.data(),
                                         value.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
    if (code != SQLITE_OK)
        db_->fail(code);
    return *this;
}

bool Statement::step() {
    const int code = sqlite3_step(handle());
    if (code == SQLITE_ROW)
        return true;
    if (code != SQLITE_DONE)
        db_->fail(code);
    return false;
}

void Statement::reset() {
    sqlite3_reset(handle());
    sqlite3_clear_bindings(handle());
}

std::int64_t Statement::number(int column) const {
    return sqlite3_column_int64(handle(), column);
}

std::string Statement::text(int column) const {
    const auto* bytes = sqlite3_column_text(handle(), column);
    if (!bytes)
        return {};
    const auto size = static_cast<std::size_t>(sqlite3_column_bytes(handle(), column));
    return {reinterpret_cast<const char*>(bytes), size};
}

Transaction::Transaction(Database& db)
    : db_{db} {
    db_.run("BEGIN IMMEDIATE");
}

Transaction::~Transaction() {
    // A disk error may have rolled back already; then there is nothing left to do.
    if (open_ && sqlite3_get_autocommit(db_.handle()) == 0)
        sqlite3_exec(db_.handle(), "ROLLBACK", nullptr, nullptr, nullptr);
}

void Transaction::commit() {
    db_.run("COMMIT");
    open_ = false;
}

Sentence sentence(const Sentence& failed, const Error& error) {
    switch (error.code) {
    case SQLITE_FULL:
        return core::says("%1: the disk is full. Free some space and try again.", failed);
    case SQLITE_READONLY:
    case SQLITE_PERM:
    case SQLITE_CANTOPEN:
        return core::says("%1: the library or its folder cannot be written to. Check who may write "
                          "there, then try again.",
                          failed);
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return core::says(
            "%1: another window of the program is writing to the library. Try again in "
            "a moment.",
            failed);
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return core::says("%1: the library is damaged. Close every window of the program and start "
                          "it again; what can be saved is then saved.",
                          failed);
    case SQLITE_IOERR:
        return core::says("%1: the disk reported an error. Check that it is still there, then try "
                          "again.",
                          failed);
    default:
        return core::says("%1: the library reported \"%2\".", failed, std::string{error.what()});
    }
}

} // namespace bastewright::sqlite
