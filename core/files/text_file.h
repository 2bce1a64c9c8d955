// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <filesystem>
#include <string>
#include <string_view>

#include "core/physics/result.h"

namespace leadline {

/// Files larger than this are refused unread: a session of 200 guests with their logs has 1 MB.
inline constexpr std::size_t largest_text_file = 8U * 1024U * 1024U;

/// The whole of a text file of at most `largest` bytes. ErrorCode::file_unreadable or
/// file_too_large otherwise.
Result<std::string> read_text_file(const std::filesystem::path& path,
                                   std::size_t largest = largest_text_file);

/// Who may read a file that is written.
enum class FileAccess {
    usual,       ///< as the system makes files; one that is replaced keeps what it allowed
    owner_only,  ///< nobody but the owner, also where it replaces a file others could read
};

/// Writes a text file so that either the old or the new content stands there, never half of it:
/// into a temporary file beside it, flushed to disk, then renamed. What is_written_through() is
/// written to and stays. ErrorCode::file_unwritable otherwise.
Result<Done> write_text_file(const std::filesystem::path& path, std::string_view text,
                             FileAccess access = FileAccess::usual);

/// Whether a pipe or a device stands at a path, itself or behind a link: a file put in its place
/// would take it away from all who use it.
[[nodiscard]] bool is_written_through(const std::filesystem::path& path);

/// Writes into the pipe or device that stands at a path. ErrorCode::file_unwritable where it takes
/// not all of it.
Result<Done> write_through(const std::filesystem::path& path, std::string_view bytes);

}  // namespace leadline
