// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/words/question_words.h"

#include <QCoreApplication>
#include <array>

namespace leadline {
namespace {

// The texts of resources/screening/questions-1.json once more, where lupdate sees them: it reads no
// JSON. A test holds the two together.
constexpr std::array health_texts{
    QT_TRANSLATE_NOOP("HealthQuestions", "Lungs"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Do your lungs or your breathing ever give you trouble?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Do you wheeze, have asthma, or carry an inhaler?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Has a lung ever collapsed, or has your chest been operated on?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Have you had pneumonia, or a cough that went on for weeks, in the "
                      "past year?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Has a doctor ever found anything else wrong with your lungs?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Heart and blood"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Has anything ever been found wrong with your heart, your blood "
                      "pressure or your blood?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Is your blood pressure high, or do you take something to lower it?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Have you had a heart attack, pain in the chest on effort, or heart "
                      "failure?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Does your heart beat out of step, or do you have a pacemaker or a "
                      "stent?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Were you born with a fault of the heart, or has a valve or a hole "
                      "in it been found or mended?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Do you bleed or clot too easily, or has your blood been treated?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Has a doctor found or operated on anything else of your heart, "
                      "your vessels or your blood?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "From 45 on"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Do you smoke or breathe in nicotine in any way?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Have you been told that your cholesterol is high?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Did a parent, brother or sister have a heart attack or a stroke "
                      "before turning 50?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Has a doctor asked you to lose weight or to be more careful with "
                      "your heart?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Effort"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Would a brisk walk for a quarter of an hour, or two lengths of a "
                      "pool, leave you gasping or in pain?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Eyes, ears, sinuses"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Have your eyes, ears, nose or sinuses been operated on, or do they "
                      "keep giving you trouble?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Have your sinuses been operated on in the past half year, or are "
                      "they often inflamed?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Has an ear been operated on, or do you hear badly or lose your "
                      "balance?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Do your ears hurt or stay blocked in aeroplanes, or has an eardrum "
                      "been torn?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Has an eye been operated on in the past three months?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Has a doctor found anything else wrong with your eyes, ears, nose "
                      "or sinuses?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Operation"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Were you operated on in the past twelve months, or does an older "
                      "operation still hold you back?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Head and nerves"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Have you ever passed out, had a fit, hurt your head badly, or had "
                      "trouble with your nerves?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Did a blow to the head knock you out in the past five years?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Have you had a fit or epilepsy, or do you take something against "
                      "it?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Did you faint or black out in the past five years?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Do you get headaches that stop you, or take something every day to "
                      "keep them away?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Have you had a stroke, numbness that stayed, or an illness of the "
                      "nerves?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Mind"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Have you been treated for your mood, for panic, for attention or "
                      "for an addiction?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Do you get attacks of panic, or are closed spaces or open water "
                      "hard to bear?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Are you in treatment now, or do you take something for your mood "
                      "or attention?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Have you been in hospital for your mind, or thought of taking your "
                      "life?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "In the past five years, have alcohol or drugs been a problem for "
                      "you?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Back, hernia, ulcer, diabetes"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Do you have trouble with your back, a hernia, an ulcer or "
                      "diabetes?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Has your back kept you from what you do every day in the past half "
                      "year?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Has your back or spine been operated on?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Do you have diabetes, or did you have it in pregnancy?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Do you have a hernia that has not been mended and gets in your "
                      "way?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Do you have an ulcer, or have you had one treated in the past half "
                      "year?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Stomach and gut"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Do your stomach or your gut give you trouble?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Do you have an opening of the gut at the belly, or were you "
                      "operated on to lose weight?"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Have you lost much fluid by vomiting or diarrhoea in the past "
                      "week?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Do you have heartburn or food coming up most weeks?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Is your gut inflamed for long times, or does it bleed?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Medicine"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Do you take medicine that a doctor prescribed, other than for "
                      "birth control or against malaria?"),
    QT_TRANSLATE_NOOP("HealthQuestions", "Pregnancy"),
    QT_TRANSLATE_NOOP("HealthQuestions",
                      "Are you pregnant, might you be, or are you trying to be?")};

}  // namespace

QString health_question(const std::string& english) {
    return QCoreApplication::translate("HealthQuestions", english.c_str());
}

std::vector<std::string> translated_health_texts() {
    return {health_texts.begin(), health_texts.end()};
}

}  // namespace leadline
