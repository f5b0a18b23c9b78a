#include "store/library.h"
#include "store/private/inside.h"
#include "store/private/put_back.h"

namespace bastewright {
namespace {

std::string_view word(KeptKind kind) {
    switch (kind) {
    case KeptKind::room:
        return "room";
    case KeptKind::person:
        return "person";
    case KeptKind::supplies:
        return "supplies";
    }
    return {};
}

bool isKept(const sqlite::Database& db, KeptKind kind, const std::string& name) {
    auto row = db.prepare("SELECT 1 FROM kept WHERE kind = ? AND name = ?");
    return row.with(word(kind), std::string_view{name}).step();
}

} // namespace

Stored<std::vector<Kept>> Library::kept(KeptKind kind) const {
    return guarded<std::vector<Kept>>(core::says("What is kept could not be listed"), [&] {
        std::vector<Kept> out;
        auto rows = inside_->db.prepare(
            "SELECT name, text, used_ms FROM kept WHERE kind = ? ORDER BY used_ms DESC, name");
        rows.with(word(kind));
        while (rows.step())
            out.push_back({rows.text(0), rows.text(1), rows.number(2)});
        return out;
    });
}

Stored<void> Library::keep(KeptKind kind, const std::string& name, const std::string& text) {
    return changed<void>(*inside_, core::says("%1 could not be kept", name), [&]() -> Stored<void> {
        sqlite::Transaction transaction{inside_->db};
        inside_->db
            .prepare("INSERT INTO kept (kind, name, text, used_ms) VALUES (?, ?, ?, ?)"
                     " ON CONFLICT (kind, name) DO UPDATE SET text = excluded.text,"
                     " used_ms = excluded.used_ms")
            .with(word(kind), std::string_view{name}, std::string_view{text}, inside_->now())
            .step();
        transaction.commit();
        return {};
    });
}

Stored<void> Library::renameKept(KeptKind kind, const std::string& from, const std::string& to) {
    return changed<void>(
        *inside_, core::says("%1 could not be renamed", from), [&]() -> Stored<void> {
            if (from == to)
                return {};
            sqlite::Transaction transaction{inside_->db};
            if (isKept(inside_->db, kind, to))
                return tl::unexpected(core::says("%1 is kept already; enter another name.", to));
            inside_->db.prepare("UPDATE kept SET name = ?, used_ms = ? WHERE kind = ? AND name = ?")
                .with(std::string_view{to}, inside_->now(), word(kind), std::string_view{from})
                .step();
            transaction.commit();
            return {};
        });
}

Stored<void> Library::forgetKept(KeptKind kind, const std::string& name) {
    return changed<void>(*inside_, core::says("%1 could not be forgotten", name),
                         [&]() -> Stored<void> {
                             sqlite::Transaction transaction{inside_->db};
                             inside_->db.prepare("DELETE FROM kept WHERE kind = ? AND name = ?")
                                 .with(word(kind), std::string_view{name})
                                 .step();
                             transaction.commit();
                             return {};
                         });
}

} // namespace bastewright
