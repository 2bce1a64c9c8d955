// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "ui/document/health_access.h"

namespace leadline::testing {

/// A vault that keeps everything in memory and opens when asked, unless told to refuse.
class FakeHealthAccess : public HealthAccess {
public:
    State now = State::locked;
    bool refuses = false;
    bool fails = false;
    int asked = 0;
    std::map<std::pair<std::string, HealthKind>, std::vector<HealthEntry>> kept;

    void set_state(State state) {
        now = state;
        Q_EMIT state_changed();
    }
    void keep(const std::string& guest, HealthKind kind, const std::string& content,
              const std::string& given_by = "Ana") {
        auto& list = kept[{guest, kind}];
        list.insert(list.begin(), {kind, "2026-07-01T08:15:00Z", given_by, content});
    }
    [[nodiscard]] std::vector<std::string> contents(const std::string& guest,
                                                    HealthKind kind) const {
        std::vector<std::string> found;
        const auto list = kept.find({guest, kind});
        if (list == kept.end()) return found;
        for (const HealthEntry& entry : list->second) found.push_back(entry.content);
        return found;
    }

    [[nodiscard]] State state() const override { return now; }
    bool ask_to_open(QWidget*) override {
        ++asked;
        if (!refuses) set_state(State::open);
        return now == State::open;
    }
    void lock() override { set_state(State::locked); }
    Result<Done> put(const GuestId& guest, HealthKind kind, const std::string& content) override {
        if (now != State::open) return Error{ErrorCode::not_found, "vault", "closed", {}};
        if (fails) return Error{ErrorCode::database_failed, "records.sqlite", "disk full", {}};
        keep(guest.text, kind, content);
        return Done{};
    }
    Result<std::vector<HealthEntry>> open(const GuestId& guest, HealthKind kind) override {
        if (now != State::open) return Error{ErrorCode::not_found, "vault", "closed", {}};
        return kept[{guest.text, kind}];
    }
    [[nodiscard]] int count(const GuestId& guest, HealthKind kind) const override {
        const auto list = kept.find({guest.text, kind});
        return list == kept.end() ? 0 : static_cast<int>(list->second.size());
    }
};

}  // namespace leadline::testing
