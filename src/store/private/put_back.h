#pragma once

#include "store/private/inside.h"

#include <optional>

namespace bastewright {

/// Where the library's file has been removed, moved or replaced under the open connection, what the
/// connection still holds is saved: put back in the library's place where nothing is there, else
/// kept beside what is. Returns the sentence that refuses the call that found out, beginning with
/// `failed`; nothing where the file is in its place.
std::optional<Sentence> putBackIfGone(Library::Inside& inside, const Sentence& failed);

/// As `guarded`, for calls that change something: a change to a file that nobody will find again is
/// not acknowledged.
template <class T, class Work>
Stored<T> changed(Library::Inside& inside, const Sentence& failed, Work&& work) {
    if (auto refusal = putBackIfGone(inside, failed))
        return tl::unexpected(*std::move(refusal));
    return guarded<T>(failed, std::forward<Work>(work));
}

} // namespace bastewright
