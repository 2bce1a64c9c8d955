// SPDX-License-Identifier: GPL-3.0-or-later
// Kills a program at work at random moments, and counts what it had been told was saved.
//   records_kill_harness --kills 200 [--seed 1] [--what edits|copies|restores|lies]
// With `lies` the child acknowledges edits that it never saves, so that this program can be seen to
// notice.
// A child process works on records in a temporary folder and says on a pipe what has been
// acknowledged to it. The parent kills it with SIGKILL, opens the records anew and looks.

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <ctime>
#include <iostream>
#include <map>
#include <random>
#include <set>
#include <sstream>
#include <string>

#include "core/records/backup.h"
#include "core/records/check.h"
#include "core/records/restore.h"
#include "core/records/session_store.h"
#include "tests/records/folder.h"
#include "tests/records/sample_values.h"

namespace {

using namespace leadline;
using test::must;

QString records_in(const QString& folder) { return folder + QStringLiteral("/records.sqlite"); }

SessionFile titled(const std::string& title) {
    SessionFile file = test::session_with(test::day(2026, 7, 4), {test::guest_named("g", "Ada")});
    file.session.title = title;
    return file;
}

/// One line for one thing that was acknowledged.
void acknowledge(const std::string& line) {
    const std::string bytes = line + '\n';
    if (::write(STDOUT_FILENO, bytes.data(), bytes.size()) != ssize_t(bytes.size())) std::exit(3);
}

/// Edits session 1 again and again; every fifth time adds a session, every seventh removes it.
[[noreturn]] void work_on_edits(const QString& folder, long first, bool lying) {
    const auto database = test::open(records_in(folder));
    SessionStore store(*database);
    for (long n = first;; ++n) {
        const std::string number = std::to_string(n);
        must(store.save(SessionRow{1}, titled(number)));
        acknowledge("saved " + std::to_string(lying ? n + 2 : n));
        if (n % 5 != 0) continue;
        const SessionRow row = must(store.insert(titled("new " + number)));
        acknowledge("added " + std::to_string(row.value));
        if (n % 7 != 0) continue;
        must(store.remove(row));
        acknowledge("removed " + std::to_string(row.value));
    }
}

[[noreturn]] void work_on_copies(const QString& folder) {
    const auto database = test::open(records_in(folder));
    SessionStore store(*database);
    for (long n = 0;; ++n) {
        must(store.save(SessionRow{1}, titled(std::to_string(n))));
        const RecordCopy copy =
            must(make_copy(records_in(folder), CopyKind::by_hand, current_time()));
        acknowledge("copy " + copy.path.toStdString());
    }
}

[[noreturn]] void work_on_restores(const QString& folder) {
    for (long n = 0;; ++n) {
        const char* name = n % 2 == 0 ? "/one.sqlite" : "/two.sqlite";
        const auto before = must(restore_copy(records_in(folder),
                                              folder + QString::fromLatin1(name), current_time()));
        if (before) must(remove_copy(*before));
        acknowledge("restored");
    }
}

int run_child(const std::string& what, const QString& folder, long first) {
    if (what == "edits") work_on_edits(folder, first, false);
    if (what == "lies") work_on_edits(folder, first, true);
    if (what == "copies") work_on_copies(folder);
    work_on_restores(folder);
}

struct Child {
    pid_t id = 0;
    int pipe = -1;
};

Child start_child(const std::string& program, const std::string& what, const QString& folder,
                  long first) {
    int ends[2];
    if (::pipe(ends) != 0) throw std::runtime_error("pipe");
    const pid_t id = ::fork();
    if (id < 0) throw std::runtime_error("fork");
    if (id == 0) {
        ::dup2(ends[1], STDOUT_FILENO);
        ::close(ends[0]);
        ::close(ends[1]);
        const std::string number = std::to_string(first);
        const std::string path = folder.toStdString();
        ::execl(program.c_str(), program.c_str(), "--child", what.c_str(), path.c_str(),
                number.c_str(), nullptr);
        ::_exit(127);
    }
    ::close(ends[1]);
    return {id, ends[0]};
}

/// Waits for the first line, lets the child work on for a while, kills it, and gives back all that
/// it had said.
std::string kill_at_random(const Child& child, std::mt19937& random) {
    std::string said;
    char buffer[4096];
    ssize_t count = ::read(child.pipe, buffer, sizeof buffer);
    if (count > 0) said.append(buffer, std::size_t(count));
    const auto micros = std::uniform_int_distribution<long>(0, 60000)(random);
    const timespec pause{0, micros * 1000};
    ::nanosleep(&pause, nullptr);
    ::kill(child.id, SIGKILL);
    int status = 0;
    ::waitpid(child.id, &status, 0);
    while ((count = ::read(child.pipe, buffer, sizeof buffer)) > 0) {
        said.append(buffer, std::size_t(count));
    }
    ::close(child.pipe);
    if (!WIFSIGNALED(status)) throw std::runtime_error("the child ended by itself: " + said);
    if (said.empty()) throw std::runtime_error("the child acknowledged nothing");
    // The last line may be cut by the end of the child only in whole: a line is one write.
    return said;
}

struct Tally {
    long survived = 0;
    long acknowledged = 0;
    long next_edit = 1;
    std::set<long> added;  ///< acknowledged and not removed, of all rounds
};

void expect(bool holds, const std::string& what) {
    if (!holds) throw std::runtime_error(what);
}

void look_at_edits(const QString& folder, const std::string& said, Tally& tally) {
    long last_saved = 0;
    std::istringstream lines(said);
    std::string word;
    long number = 0;
    while (lines >> word >> number) {
        ++tally.acknowledged;
        if (word == "saved") last_saved = number;
        if (word == "added") tally.added.insert(number);
        if (word == "removed") tally.added.erase(number);
    }
    const auto database = test::open(records_in(folder));
    SessionStore store(*database);
    const long stored = std::stol(must(store.load(SessionRow{1})).session.title);
    expect(stored >= last_saved, "edit " + std::to_string(last_saved) + " is lost, the title is " +
                                     std::to_string(stored));
    expect(stored <= last_saved + 1, "an edit from nowhere");
    std::set<long> there;
    for (const SessionSummary& session : must(store.list())) there.insert(session.row.value);
    for (const long row : tally.added) {
        // The very last step may have stood without being acknowledged: a removal then.
        const bool last_one = row == *tally.added.rbegin();
        expect(there.contains(row) || last_one, "session " + std::to_string(row) + " is lost");
    }
    tally.added = there;
    tally.added.erase(1);
    tally.next_edit = stored + 1;
}

void look_at_copies(const QString& folder, const std::string& said, Tally& tally) {
    std::istringstream lines(said);
    std::string word;
    std::string path;
    while (lines >> word >> path) {
        ++tally.acknowledged;
        expect(QFile::exists(QString::fromStdString(path)), path + " is lost");
    }
    for (const RecordCopy& copy : list_copies(records_in(folder))) {
        must(check_records_file(copy.path, CheckDepth::thorough));
        must(remove_copy(copy));
    }
    remove_leftovers(records_in(folder), current_time() + std::chrono::hours(2));
    const QStringList left = QDir(copies_folder(records_in(folder))).entryList(QDir::Files);
    expect(left.empty(), "left over: " + left.join(QLatin1Char(' ')).toStdString());
}

void look_at_restores(const QString& folder, const std::string& said, Tally& tally) {
    tally.acknowledged += std::count(said.begin(), said.end(), '\n');
    const auto database = test::open(records_in(folder));
    const std::vector<SessionSummary> sessions = must(SessionStore(*database).list());
    const std::string title = sessions.empty() ? std::string() : sessions.front().title;
    // "one" has one session, "two" has two.
    const bool one = title == "one" && sessions.size() == 1;
    const bool two = title == "two" && sessions.size() == 2;
    expect(one || two, "neither the old nor the new records: " + title);
}

void make_records(const QString& folder) {
    {
        const auto database = test::open(records_in(folder));
        must(SessionStore(*database).insert(titled("0")));
    }
    for (const char* name : {"one", "two"}) {
        const auto database = test::open(folder + QStringLiteral("/%1.sqlite").arg(QLatin1String(name)));
        SessionStore store(*database);
        must(store.insert(titled(name)));
        if (std::string(name) == "two") must(store.insert(titled(name)));
    }
}

int run_parent(const std::string& program, const std::string& what, long kills, unsigned seed) {
    const QTemporaryDir folder;
    make_records(folder.path());
    std::mt19937 random(seed);
    Tally tally;
    for (long i = 0; i < kills; ++i) {
        try {
            const std::string said = kill_at_random(
                start_child(program, what, folder.path(), tally.next_edit), random);
            if (what == "edits" || what == "lies") look_at_edits(folder.path(), said, tally);
            if (what == "copies") look_at_copies(folder.path(), said, tally);
            if (what == "restores") look_at_restores(folder.path(), said, tally);
            must(check_records_file(records_in(folder.path()), CheckDepth::thorough));
            ++tally.survived;
        } catch (const std::exception& failure) {
            std::cerr << "kill " << i + 1 << ": " << failure.what() << std::endl;
        }
    }
    std::cout << tally.survived << " of " << kills << " survived (" << what << ", "
              << tally.acknowledged << " acknowledged)" << std::endl;
    return tally.survived == kills ? 0 : 1;
}

}  // namespace

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    const std::vector<std::string> arguments(argv + 1, argv + argc);
    try {
        if (arguments.size() == 4 && arguments[0] == "--child") {
            return run_child(arguments[1], QString::fromStdString(arguments[2]),
                             std::stol(arguments[3]));
        }
        std::map<std::string, std::string> options{
            {"--kills", "200"}, {"--seed", "1"}, {"--what", "edits"}};
        for (std::size_t i = 0; i + 1 < arguments.size(); i += 2) options[arguments[i]] = arguments[i + 1];
        return run_parent(QCoreApplication::applicationFilePath().toStdString(),
                          options["--what"], std::stol(options["--kills"]),
                          unsigned(std::stoul(options["--seed"])));
    } catch (const std::exception& failure) {
        std::cerr << failure.what() << std::endl;
        return 2;
    }
}
