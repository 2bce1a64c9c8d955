// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/body/breathing.h"

namespace leadline {

LitersPerMinute planning_rmv(BreathingClass breathing) {
    switch (breathing) {
        case BreathingClass::calm:
            return LitersPerMinute(20.0);
        case BreathingClass::average:
            return LitersPerMinute(25.0);
        case BreathingClass::nervous:
            break;
        case BreathingClass::child:
            return LitersPerMinute(18.0);
    }
    // The highest also for a value that no class has: too much air planned is the safe side.
    return LitersPerMinute(35.0);
}

}  // namespace leadline
