#include "support/disk/disk.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <sys/stat.h>
#include <utility>

namespace bastewright::made {
namespace {

namespace fs = std::filesystem;
using Kind = Disk::Step::Kind;

constexpr std::int64_t kSector = 512;
Disk* recording = nullptr;

std::string contentsOf(const fs::path& file) {
    std::ifstream in{file, std::ios::binary};
    return {std::istreambuf_iterator<char>{in}, {}};
}

void put(std::string& file, std::int64_t offset, std::string_view bytes, char between) {
    const auto end = static_cast<std::size_t>(offset) + bytes.size();
    if (file.size() < end)
        file.resize(end, between);
    file.replace(static_cast<std::size_t>(offset), bytes.size(), bytes);
}

void apply(std::string& file, const Disk::Step& step, char between) {
    if (step.kind == Kind::write)
        put(file, step.offset, step.bytes, between);
    else
        file.resize(static_cast<std::size_t>(step.offset), between);
}

bool toss(std::mt19937_64& dice) {
    return dice() % 2 == 0;
}

/// Any of a write's sectors: all, none, the first so many, or here and there.
void applySome(std::string& file, const Disk::Step& step, std::mt19937_64& dice) {
    const char rubbish = toss(dice) ? '\0' : '\xA5';
    const auto how = dice() % 4;
    if (how == 0)
        return;
    if (how == 1 || step.kind != Kind::write)
        return apply(file, step, rubbish);
    const auto size = static_cast<std::int64_t>(step.bytes.size());
    const auto until = static_cast<std::int64_t>(dice() % static_cast<std::uint64_t>(size + 1));
    for (std::int64_t at = 0; at < size;) {
        const auto next =
            std::min(size, (step.offset + at) / kSector * kSector + kSector - step.offset);
        if (how == 2 ? at < until : toss(dice))
            put(file, step.offset + at,
                std::string_view{step.bytes}.substr(static_cast<std::size_t>(at),
                                                    static_cast<std::size_t>(next - at)),
                rubbish);
        at = next;
    }
}

void applyName(std::map<std::string, Disk::File>& names, const Disk::Step& step) {
    if (step.kind == Kind::link)
        names[step.name] = step.file;
    else if (step.kind == Kind::unlink)
        names.erase(step.name);
    else if (auto moved = names.extract(step.name))
        names.insert_or_assign(step.to, moved.mapped());
}

} // namespace

Disk* recordingDisk() {
    return recording;
}

Disk::Disk(std::string folder)
    : folder_{std::move(folder)} {
    struct stat s {};
    if (recording || ::stat(folder_.c_str(), &s) != 0)
        throw std::logic_error{"one disk at a time, in a folder that is there"};
    device_ = s.st_dev;
    folderNode_ = s.st_ino;
    for (const auto& entry : fs::directory_iterator{folder_}) {
        ::stat(entry.path().c_str(), &s);
        const File file = nodes_[{s.st_dev, s.st_ino}] = ++last_;
        names_[entry.path().filename()] = file;
        atStart_[file] = contentsOf(entry.path());
    }
    namesAtStart_ = names_;
    recording = this;
}

Disk::~Disk() {
    stop();
}

void Disk::stop() {
    if (recording == this)
        recording = nullptr;
}

std::string Disk::nameIn(const std::string& path) const {
    const fs::path whole{path};
    return whole.parent_path() == folder_ ? whole.filename().string() : "";
}

Disk::File Disk::fileOf(int fd) const {
    struct stat s {};
    if (::fstat(fd, &s) != 0)
        return 0;
    const auto at = nodes_.find({s.st_dev, s.st_ino});
    return at == nodes_.end() ? 0 : at->second;
}

void Disk::opened(int fd, const std::string& path, bool isNew) {
    const auto name = nameIn(path);
    struct stat s {};
    if (name.empty() || !isNew || ::fstat(fd, &s) != 0 || !S_ISREG(s.st_mode))
        return;
    names_[name] = nodes_[{s.st_dev, s.st_ino}] = ++last_;
    steps_.push_back({.kind = Kind::link, .file = last_, .bytes = {}, .name = name, .to = {}});
}

void Disk::written(int fd, std::int64_t offset, const void* bytes, std::size_t count) {
    if (const File file = fileOf(fd); file != 0 && count > 0)
        steps_.push_back({.kind = Kind::write,
                          .file = file,
                          .offset = offset,
                          .bytes = {static_cast<const char*>(bytes), count},
                          .name = {},
                          .to = {}});
}

void Disk::truncated(int fd, std::int64_t length) {
    if (const File file = fileOf(fd))
        steps_.push_back({.kind = Kind::truncate,
                          .file = file,
                          .offset = length,
                          .bytes = {},
                          .name = {},
                          .to = {}});
}

void Disk::flushed(int fd) {
    struct stat s {};
    if (::fstat(fd, &s) != 0)
        return;
    if (s.st_dev == device_ && s.st_ino == folderNode_)
        steps_.push_back({.kind = Kind::flushFolder, .bytes = {}, .name = {}, .to = {}});
    else if (const File file = fileOf(fd))
        steps_.push_back({.kind = Kind::flush, .file = file, .bytes = {}, .name = {}, .to = {}});
}

void Disk::linked(const std::string& from, const std::string& to) {
    const auto name = nameIn(to);
    const auto at = names_.find(nameIn(from));
    if (name.empty() || at == names_.end())
        return;
    names_[name] = at->second;
    steps_.push_back({.kind = Kind::link, .file = at->second, .bytes = {}, .name = name, .to = {}});
}

void Disk::renamed(const std::string& from, const std::string& to) {
    Step step{.kind = Kind::rename, .bytes = {}, .name = nameIn(from), .to = nameIn(to)};
    if (step.name.empty() || step.to.empty())
        return;
    applyName(names_, step);
    steps_.push_back(std::move(step));
}

void Disk::unlinked(const std::string& path) {
    Step step{.kind = Kind::unlink, .bytes = {}, .name = nameIn(path), .to = {}};
    if (step.name.empty())
        return;
    applyName(names_, step);
    steps_.push_back(std::move(step));
}

void Disk::cut(std::size_t after, std::mt19937_64& dice, const std::string& into) const {
    std::map<File, Image> files;
    for (const auto& [file, bytes] : atStart_)
        files[file].bytes = bytes;
    auto names = namesAtStart_;
    std::vector<const Step*> unsafeNames;
    for (std::size_t i = 0; i < after; ++i) {
        const Step& step = steps_[i];
        switch (step.kind) {
        case Kind::write:
        case Kind::truncate:
            files[step.file].unsafe.push_back(&step);
            break;
        case Kind::flush: {
            auto& file = files[step.file];
            for (const Step* s : std::exchange(file.unsafe, {}))
                apply(file.bytes, *s, '\0');
            break;
        }
        case Kind::flushFolder:
            for (const Step* s : std::exchange(unsafeNames, {}))
                applyName(names, *s);
            break;
        default:
            unsafeNames.push_back(&step);
        }
    }
    const auto kept = dice() % (unsafeNames.size() + 1);
    for (std::size_t i = 0; i < kept; ++i)
        applyName(names, *unsafeNames[i]);
    fs::remove_all(into);
    fs::create_directories(into);
    for (const auto& [name, file] : names) {
        auto& image = files[file];
        std::shuffle(image.unsafe.begin(), image.unsafe.end(), dice);
        for (const Step* s : std::exchange(image.unsafe, {}))
            applySome(image.bytes, *s, dice);
        std::ofstream{fs::path{into} / name, std::ios::binary} << image.bytes;
    }
}

} // namespace bastewright::made
