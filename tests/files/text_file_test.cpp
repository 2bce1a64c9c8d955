// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/files/text_file.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <filesystem>
#include <fstream>
#include <string>
#include <system_error>

#include "tests/files/support.h"

namespace leadline::files_test {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

TEST(TextFile, HoldsWhatWasWritten) {
    const ScratchFolder folder;
    const std::string text("first\nsecond\0third \xC3\xA9\r\n", 23);
    ASSERT_TRUE(write_text_file(folder / "a.json", text));
    const Result<std::string> read = read_text_file(folder / "a.json");
    ASSERT_TRUE(read) << testing::PrintToString(read.error());
    EXPECT_EQ(*read, text);
    EXPECT_THAT(folder.names(), ElementsAre("a.json"));
}

TEST(TextFile, ReplacesALongerOne) {
    const ScratchFolder folder;
    ASSERT_TRUE(write_text_file(folder / "a.json", std::string(100000, 'x')));
    ASSERT_TRUE(write_text_file(folder / "a.json", "short"));
    EXPECT_EQ(slurp(folder / "a.json"), "short");
    EXPECT_THAT(folder.names(), ElementsAre("a.json"));
}

TEST(TextFile, MayBeEmpty) {
    const ScratchFolder folder;
    ASSERT_TRUE(write_text_file(folder / "a.json", ""));
    EXPECT_EQ(read_text_file(folder / "a.json").value_or("?"), "");
}

TEST(TextFile, MissingOneIsUnreadable) {
    const ScratchFolder folder;
    const Result<std::string> read = read_text_file(folder / "none.json");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::file_unreadable);
    EXPECT_EQ(read.error().place, (folder / "none.json").string());
    EXPECT_THAT(read.error().given, Not(IsEmpty()));
}

TEST(TextFile, FolderIsUnreadable) {
    const ScratchFolder folder;
    const Result<std::string> read = read_text_file(folder.path());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::file_unreadable);
}

TEST(TextFile, LargestIsReadAndOneByteMoreIsNot) {
    const ScratchFolder folder;
    std::ofstream(folder / "big.json") << std::string(largest_text_file, ' ');
    const Result<std::string> largest = read_text_file(folder / "big.json");
    ASSERT_TRUE(largest);
    EXPECT_EQ(largest->size(), largest_text_file);

    std::ofstream(folder / "big.json", std::ios::app) << ' ';
    const Result<std::string> larger = read_text_file(folder / "big.json");
    ASSERT_FALSE(larger);
    EXPECT_EQ(larger.error(), (Error{ErrorCode::file_too_large, (folder / "big.json").string(),
                                     std::to_string(largest_text_file + 1),
                                     std::to_string(largest_text_file)}));
}

TEST(TextFile, EndlessDeviceIsTooLarge) {
    const Result<std::string> read = read_text_file("/dev/zero");
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::file_too_large);
}

TEST(TextFile, MissingFolderIsUnwritable) {
    const ScratchFolder folder;
    const std::filesystem::path path = folder / "none/a.json";
    const Result<Done> written = write_text_file(path, "x");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::file_unwritable);
    EXPECT_EQ(written.error().place, path.string());
    EXPECT_THAT(written.error().given, Not(IsEmpty()));
}

TEST(TextFile, FolderInItsPlaceIsUnwritableAndLeavesNothingBehind) {
    const ScratchFolder folder;
    std::filesystem::create_directory(folder / "a.json");
    const Result<Done> written = write_text_file(folder / "a.json", "x");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::file_unwritable);
    EXPECT_THAT(folder.names(), ElementsAre("a.json"));
}

TEST(TextFile, KeepsItsPermissions) {
    using std::filesystem::perms;
    const ScratchFolder folder;
    ASSERT_TRUE(write_text_file(folder / "a.json", "old"));
    const perms wanted = perms::owner_read | perms::owner_write;
    std::filesystem::permissions(folder / "a.json", wanted);
    ASSERT_TRUE(write_text_file(folder / "a.json", "new"));
    EXPECT_EQ(std::filesystem::status(folder / "a.json").permissions(), wanted);
}

TEST(TextFile, IsForItsOwnerAloneWhereThatIsAsked) {
    using std::filesystem::perms;
    const ScratchFolder folder;
    const perms wanted = perms::owner_read | perms::owner_write;
    ASSERT_TRUE(write_text_file(folder / "new.html", "x", FileAccess::owner_only));
    EXPECT_EQ(std::filesystem::status(folder / "new.html").permissions(), wanted);
    ASSERT_TRUE(write_text_file(folder / "old.html", "x"));
    std::filesystem::permissions(folder / "old.html", wanted | perms::others_read);
    ASSERT_TRUE(write_text_file(folder / "old.html", "y", FileAccess::owner_only));
    EXPECT_EQ(std::filesystem::status(folder / "old.html").permissions(), wanted);
}

TEST(TextFile, WritesThroughASymbolicLink) {
    const ScratchFolder folder;
    ASSERT_TRUE(write_text_file(folder / "real.json", "old"));
    std::filesystem::create_symlink("real.json", folder / "link.json");
    ASSERT_TRUE(write_text_file(folder / "link.json", "new"));
    EXPECT_TRUE(std::filesystem::is_symlink(folder / "link.json"));
    EXPECT_EQ(slurp(folder / "real.json"), "new");
}

/// The reading end of a pipe with a name, open before anybody writes.
class NamedPipe {
public:
    explicit NamedPipe(const std::filesystem::path& path) {
        EXPECT_EQ(::mkfifo(path.c_str(), 0600), 0);
        reader_ = ::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC);
        EXPECT_GE(reader_, 0);
    }
    ~NamedPipe() { ::close(reader_); }
    NamedPipe(const NamedPipe&) = delete;
    NamedPipe& operator=(const NamedPipe&) = delete;
    [[nodiscard]] std::string read() const {
        std::array<char, 4096> buffer{};
        const ssize_t count = ::read(reader_, buffer.data(), buffer.size());
        return {buffer.data(), static_cast<std::size_t>(std::max<ssize_t>(count, 0))};
    }

private:
    int reader_ = -1;
};

TEST(TextFile, APipeIsWrittenToAndStaysOne) {
    const ScratchFolder folder;
    const NamedPipe pipe(folder / "pipe");
    std::filesystem::create_symlink("pipe", folder / "link");
    for (const char* name : {"pipe", "link"}) {
        for (const FileAccess access : {FileAccess::usual, FileAccess::owner_only}) {
            EXPECT_TRUE(is_written_through(folder / name));
            ASSERT_TRUE(write_text_file(folder / name, "all of it\n", access)) << name;
            EXPECT_EQ(pipe.read(), "all of it\n");
        }
    }
    EXPECT_TRUE(std::filesystem::is_fifo(std::filesystem::symlink_status(folder / "pipe")));
    EXPECT_TRUE(std::filesystem::is_symlink(folder / "link"));
    EXPECT_THAT(folder.names(), testing::UnorderedElementsAre("link", "pipe"));
}

TEST(TextFile, ADeviceIsWrittenToAndSaysWhenItIsFull) {
    // Not through write_text_file(): were it wrong, it would take the system's devices away.
    ASSERT_TRUE(is_written_through("/dev/null"));
    EXPECT_TRUE(write_through("/dev/null", "gone"));
    ASSERT_TRUE(is_written_through("/dev/full"));
    const Result<Done> full = write_through("/dev/full", "no room");
    ASSERT_FALSE(full);
    EXPECT_EQ(full.error().code, ErrorCode::file_unwritable);
    EXPECT_EQ(full.error().place, "/dev/full");
    EXPECT_EQ(full.error().given, std::generic_category().message(ENOSPC));
}

TEST(TextFile, FilesAndFoldersAndNothingAreNotWrittenThrough) {
    const ScratchFolder folder;
    std::ofstream(folder / "a.json") << "x";
    EXPECT_FALSE(is_written_through(folder / "a.json"));
    EXPECT_FALSE(is_written_through(folder / "none.json"));
    EXPECT_FALSE(is_written_through(folder.path()));
    EXPECT_FALSE(is_written_through(""));
}

}  // namespace
}  // namespace leadline::files_test
