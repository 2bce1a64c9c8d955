// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/text_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <system_error>

namespace leadline {
namespace {

std::string system_reason(int code) { return std::generic_category().message(code); }

/// An open file; closed when it goes out of scope.
class File {
public:
    explicit File(int descriptor) : descriptor_(descriptor) {}
    File(const File&) = delete;
    File& operator=(const File&) = delete;
    ~File() {
        if (descriptor_ >= 0) ::close(descriptor_);
    }
    [[nodiscard]] bool is_open() const { return descriptor_ >= 0; }
    [[nodiscard]] int get() const { return descriptor_; }
    /// Closes now, because closing can be the first to report that the disk is full.
    [[nodiscard]] bool close() {
        const int descriptor = descriptor_;
        descriptor_ = -1;
        return ::close(descriptor) == 0;
    }

private:
    int descriptor_;
};

Error unreadable(const std::filesystem::path& path, int code) {
    return {ErrorCode::file_unreadable, path.string(), system_reason(code), ""};
}

Error unwritable(const std::filesystem::path& path, int code) {
    return {ErrorCode::file_unwritable, path.string(), system_reason(code), ""};
}

bool write_all(int descriptor, std::string_view text) {
    while (!text.empty()) {
        const ssize_t written = ::write(descriptor, text.data(), text.size());
        if (written < 0) {
            if (errno == EINTR) continue;
            return false;
        }
        text.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

/// Where a write really goes: through symbolic links, so that a link stays one.
std::filesystem::path link_target(const std::filesystem::path& path) {
    std::error_code code;
    const std::filesystem::path target = std::filesystem::weakly_canonical(path, code);
    return code ? path : target;
}

/// Makes the rename itself durable. A file system that cannot flush a folder has done all it can.
void flush_folder(const std::filesystem::path& file) {
    const std::filesystem::path folder = file.has_parent_path() ? file.parent_path() : ".";
    const File opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (opened.is_open()) (void)::fsync(opened.get());
}

/// Writes and flushes `temporary`; it is gone again when that fails.
Result<Done> write_temporary(const std::filesystem::path& temporary,
                             const std::filesystem::path& target, std::string_view text,
                             FileAccess access) {
    const bool private_file = access == FileAccess::owner_only;
    const mode_t mode = private_file ? 0600 : 0666;
    File file(::open(temporary.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode));
    if (!file.is_open()) return unwritable(target, errno);
    struct stat present {};
    const bool kept_mode = private_file || ::stat(target.c_str(), &present) != 0 ||
                           ::fchmod(file.get(), present.st_mode & 07777) == 0;
    if (!kept_mode || !write_all(file.get(), text) || ::fsync(file.get()) != 0 || !file.close()) {
        const int code = errno;
        ::unlink(temporary.c_str());
        return unwritable(target, code);
    }
    return Done{};
}

}  // namespace

Result<std::string> read_text_file(const std::filesystem::path& path, std::size_t largest) {
    const File file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file.is_open()) return unreadable(path, errno);
    std::string text;
    std::array<char, 65536> buffer{};
    for (;;) {
        const ssize_t count = ::read(file.get(), buffer.data(), buffer.size());
        if (count == 0) return text;
        if (count < 0) {
            if (errno == EINTR) continue;
            return unreadable(path, errno);
        }
        text.append(buffer.data(), static_cast<std::size_t>(count));
        if (text.size() > largest) {
            // Some files (devices, pipes) have no size of their own: then what was read so far.
            struct stat state {};
            const bool sized = ::fstat(file.get(), &state) == 0 && S_ISREG(state.st_mode);
            return Error{ErrorCode::file_too_large, path.string(),
                         sized ? std::to_string(state.st_size) : std::to_string(text.size()),
                         std::to_string(largest)};
        }
    }
}

bool is_written_through(const std::filesystem::path& path) {
    struct stat there {};
    return ::stat(path.c_str(), &there) == 0 && !S_ISREG(there.st_mode) && !S_ISDIR(there.st_mode);
}

Result<Done> write_through(const std::filesystem::path& path, std::string_view bytes) {
    File file(::open(path.c_str(), O_WRONLY | O_CLOEXEC));
    if (!file.is_open()) return unwritable(path, errno);
    if (!write_all(file.get(), bytes) || !file.close()) return unwritable(path, errno);
    return Done{};
}

Result<Done> write_text_file(const std::filesystem::path& path, std::string_view text,
                             FileAccess access) {
    if (is_written_through(path)) return write_through(path, text);
    const std::filesystem::path target = link_target(path);
    std::filesystem::path temporary = target;
    temporary += "." + std::to_string(::getpid()) + ".part";
    // One left behind by a process of the same number that was killed is nobody's any more.
    ::unlink(temporary.c_str());
    if (const Result<Done> written = write_temporary(temporary, target, text, access); !written) {
        return written;
    }
    if (::rename(temporary.c_str(), target.c_str()) != 0) {
        const int code = errno;
        ::unlink(temporary.c_str());
        return unwritable(target, code);
    }
    flush_folder(target);
    return Done{};
}

}  // namespace leadline
