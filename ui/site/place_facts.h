// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

namespace leadline {

class SessionDocument;

/// One number of the place, said with its unit, and why it is so.
struct PlaceFact {
    QString id;      ///< "surface_pressure"; the same at every call, in the same order
    QString name;    ///< "Pressure at the surface"
    QString value;   ///< "1.01 bar"
    QString reason;  ///< how it is found, in one or two sentences, with the source
};

/// The numbers of plan().environment in words; always the same facts in the same order.
std::vector<PlaceFact> place_facts(const SessionDocument& document);

}  // namespace leadline
