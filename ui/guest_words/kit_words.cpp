// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/guest_words/signal_words.h"

#include <QCoreApplication>

#include "ui/guest_words/picture_path.h"

namespace leadline {
QString skill_picture(Skill skill) {
    switch (skill) {
        case Skill::breathe_from_mouthpiece: return picture_path("skills/breathe-from-mouthpiece");
        case Skill::clear_mask: return picture_path("skills/clear-mask");
        case Skill::clear_mouthpiece: return picture_path("skills/clear-mouthpiece");
        case Skill::find_mouthpiece: return picture_path("skills/find-mouthpiece");
        case Skill::clear_ears: return picture_path("skills/clear-ears");
        case Skill::fill_and_empty_bcd: return picture_path("skills/fill-and-empty-bcd");
        case Skill::share_air: return picture_path("skills/share-air");
        case Skill::float_at_surface: return picture_path("skills/float-at-surface");
    }
    return {};
}

QString skill_name(Skill skill, const GuestTongue& tongue) {
    switch (skill) {
        case Skill::breathe_from_mouthpiece:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Breathe under water"));
        case Skill::clear_mask:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Clear your mask"));
        case Skill::clear_mouthpiece:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Clear the mouthpiece"));
        case Skill::find_mouthpiece:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Find the mouthpiece"));
        case Skill::clear_ears:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Clear your ears"));
        case Skill::fill_and_empty_bcd:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Fill and empty the BCD"));
        case Skill::share_air:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Share air"));
        case Skill::float_at_surface:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Float at the top"));
    }
    return {};
}

QString skill_purpose(Skill skill, const GuestTongue& tongue) {
    switch (skill) {
        case Skill::breathe_from_mouthpiece:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "So that slow, steady breaths feel easy before you go down."));
        case Skill::clear_mask:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "So that water in the mask is no worry: you know how to blow it out."));
        case Skill::clear_mouthpiece:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "So that you can blow water out and breathe on."));
        case Skill::find_mouthpiece:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "So that you can get it back if it slips out."));
        case Skill::clear_ears:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "So that going down need not hurt."));
        case Skill::fill_and_empty_bcd:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "So that you can float, or sink, when you choose."));
        case Skill::share_air:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "So that you can breathe from the spare if yours runs low."));
        case Skill::float_at_surface:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "So that you can rest with your head above the water."));
    }
    return {};
}

QString kit_picture(KitPart part) {
    switch (part) {
        case KitPart::suit: return picture_path("kit/suit");
        case KitPart::bcd: return picture_path("kit/bcd");
        case KitPart::fins: return picture_path("kit/fins");
        case KitPart::mask: return picture_path("kit/mask");
        case KitPart::mouthpiece: return picture_path("kit/mouthpiece");
        case KitPart::weights: return picture_path("kit/weights");
        case KitPart::cylinder: return picture_path("kit/cylinder");
        case KitPart::gauge: return picture_path("kit/gauge");
    }
    return {};
}

QString kit_name(KitPart part, const GuestTongue& tongue) {
    switch (part) {
        case KitPart::suit:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Suit"));
        case KitPart::bcd:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "BCD"));
        case KitPart::fins:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Fins"));
        case KitPart::mask:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Mask"));
        case KitPart::mouthpiece:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Mouthpiece"));
        case KitPart::weights:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Weights"));
        case KitPart::cylinder:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Cylinder"));
        case KitPart::gauge:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Gauge"));
    }
    return {};
}

QString kit_purpose(KitPart part, const GuestTongue& tongue) {
    switch (part) {
        case KitPart::suit:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Keeps you warm."));
        case KitPart::bcd:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "The jacket that lets you float or sink."));
        case KitPart::fins:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Move you with slow kicks."));
        case KitPart::mask:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Lets you see. Your nose is inside, so that you can blow into it."));
        case KitPart::mouthpiece:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Gives you air when you breathe in."));
        case KitPart::weights:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Help you to sink. Your instructor shows how to drop them."));
        case KitPart::cylinder:
            return tongue.say(QT_TRANSLATE_NOOP("Guest", "Holds your air."));
        case KitPart::gauge:
            return tongue.say(QT_TRANSLATE_NOOP(
                "Guest", "Shows how much air is left. Look at it often."));
    }
    return {};
}

}  // namespace leadline
