// SPDX-License-Identifier: GPL-3.0-or-later
#include <gmock/gmock.h>

#include <QCheckBox>
#include <QPlainTextEdit>

#include "core/files/questionnaire_file.h"
#include "tests/ui/fake_health_access.h"
#include "tests/ui/roster_fixture.h"
#include "ui/roster/guest_editor.h"

namespace leadline::testing {
namespace {

using State = HealthAccess::State;

/// The screening page of Ana, who has not been asked yet, and Bo, who is ready.
class ScreeningPageTest : public RosterTest {
protected:
    void open_page(const HealthCheck& check = {}) {
        Session session = session_with({"Ana", "Bo"});
        session.guests[0].screening = check;
        open(session);
        auto* page = tab_->findChild<GuestEditor*>()->screening();
        page->set_today([] { return day(2026, 7, 3); });
        click("page_screening");
    }
    void open_with_vault(const HealthCheck& check = {}) {
        open_page(check);
        tab_->set_health_access(&vault_);
    }
    void answer_all_no() {
        click("open_questions");
        click("all_no_health");
        click("all_no_today");
    }
    bool visible(const char* name) {
        auto* widget = tab_->findChild<QWidget*>(QString::fromUtf8(name));
        return widget != nullptr && widget->isVisible();
    }
    const HealthCheck& check() const { return guest(0).screening; }
    void sign(const char* pad_name = "signature_pad") {
        auto* pad = child<QWidget>(pad_name);
        QTest::mousePress(pad, Qt::LeftButton, {}, QPoint(20, 20));
        QTest::mouseMove(pad, QPoint(60, 50));
        QTest::mouseRelease(pad, Qt::LeftButton, {}, QPoint(90, 30));
    }
    static HealthCheck physician() {
        return {ScreeningOutcome::physician_required, day(2026, 7, 1), present_edition,
                "Mara Lind", false, std::nullopt, TodayOutcome::unanswered,
                SignatureKind::on_paper};
    }

    FakeHealthAccess vault_;
};

TEST_F(ScreeningPageTest, RecordsTheOutcomeAsOneStepAndNoAnswer) {
    open_page();
    EXPECT_EQ(text_of("screening_outcome"), "Not answered");
    EXPECT_FALSE(visible("screening_details"));
    answer_all_no();
    EXPECT_EQ(text_of("draft_outcome"), "Comes to: Clear · Clear today");
    EXPECT_EQ(check(), HealthCheck());
    EXPECT_THAT(text_of("sealing_remark"), ::testing::HasSubstr("only the outcome is kept"));
    choose("signature_combo", "Signed on paper");
    const int steps = document_.undo_stack()->count();
    click("record_check");
    EXPECT_EQ(document_.undo_stack()->count(), steps + 1);
    EXPECT_EQ(check(), (HealthCheck{ScreeningOutcome::clear, day(2026, 7, 3), present_edition,
                                    "Mara Lind", false, std::nullopt, TodayOutcome::clear,
                                    SignatureKind::on_paper}));
    EXPECT_EQ(text_of("screening_details"),
              "Checked on 3 July 2026 · edition Leadline 1 · by Mara Lind · Signed on paper");
    EXPECT_FALSE(visible("check_panel"));
    document_.undo_stack()->undo();
    EXPECT_EQ(check(), HealthCheck());
    EXPECT_EQ(text_of("screening_outcome"), "Not answered");
}

TEST_F(ScreeningPageTest, UnfoldsCloserQuestionsOnlyAfterAYes) {
    open_page();
    click("open_questions");
    EXPECT_FALSE(visible("closer_lungs"));
    click("answer_lungs_yes");
    EXPECT_TRUE(visible("closer_lungs"));
    EXPECT_EQ(child<QAbstractButton>("all_no_health")->text().remove(u'&'),
              QStringLiteral("All others no"));
    click("all_no_health");
    EXPECT_EQ(text_of("draft_outcome"), "Comes to: Not answered · Not asked today · 4 still open");
    click("all_no_lungs");
    EXPECT_EQ(text_of("draft_outcome"), "Comes to: Clear · Not asked today");
    click("answer_lungs_asthma_yes");
    EXPECT_EQ(text_of("draft_outcome"), "Comes to: Physician first · Not asked today");
    click("answer_lungs_no");
    EXPECT_FALSE(visible("closer_lungs"));
    EXPECT_EQ(text_of("draft_outcome"), "Comes to: Clear · Not asked today");
    click("answer_pregnancy_yes");
    EXPECT_EQ(text_of("draft_outcome"), "Comes to: Does not dive · Not asked today");
}

TEST_F(ScreeningPageTest, AsksByAgeFromTheDayOfTheSession) {
    Session session = session_with({"Ana"});
    session.guests[0].screening = {};
    session.guests[0].birth_date = day(1981, 7, 4);  // 45 on the day itself
    open(session);
    click("page_screening");
    click("open_questions");
    EXPECT_TRUE(visible("closer_over_45"));
    click("all_no_health");
    EXPECT_THAT(text_of("draft_outcome"), ::testing::StartsWith("Comes to: Not answered"));
    click("all_no_over_45");
    EXPECT_THAT(text_of("draft_outcome"), ::testing::StartsWith("Comes to: Clear"));
    click("close_check");
    ASSERT_TRUE(document_.edit(QStringLiteral("x"), [](Session& changed) {
        changed.guests[0].birth_date = day(1981, 7, 5);
    }).has_value());
    click("open_questions");
    EXPECT_FALSE(visible("closer_over_45"));
}

TEST_F(ScreeningPageTest, TheQuestionsOfTheDayAloneLeaveTheCheckAsItIs) {
    HealthCheck before = physician();
    before.physician_approval_seen = true;
    before.approval_on = day(2026, 7, 1);
    open_page(before);
    click("open_questions");
    click("answer_cannot_swim_yes");
    click("all_no_today");
    click("record_check");
    before.today = TodayOutcome::with_care;
    EXPECT_EQ(check(), before);
    EXPECT_EQ(text_of("screening_today"), "With care today");
}

TEST_F(ScreeningPageTest, ANewCheckIsUnsignedAndTakesNoUndatedRelease) {
    HealthCheck before = physician();
    before.physician_approval_seen = true;
    open_page(before);
    answer_all_no();
    click("answer_surgery_last_year_yes");
    click("record_check");
    EXPECT_EQ(check().outcome, ScreeningOutcome::physician_required);
    EXPECT_EQ(check().checked_on, day(2026, 7, 3));
    EXPECT_EQ(check().signature, SignatureKind::none);
    EXPECT_FALSE(check().physician_approval_seen) << "it may be of before what was answered now";
}

TEST_F(ScreeningPageTest, AReleaseIsTickedWithItsDate) {
    open_page(physician());
    EXPECT_EQ(text_of("screening_outcome"), "Physician first");
    EXPECT_FALSE(child<QWidget>("approval_date_edit")->isEnabled());
    click("approval_check");
    EXPECT_TRUE(check().physician_approval_seen);
    EXPECT_EQ(text_of("screening_outcome"), "Clear");
    enter("approval_date_edit", "2/7/2026");
    EXPECT_EQ(check().approval_on, day(2026, 7, 2));
    enter("approval_date_edit", "soon");
    EXPECT_TRUE(visible("approval_message"));
    EXPECT_EQ(check().approval_on, day(2026, 7, 2));
    click("approval_check");
    EXPECT_FALSE(check().physician_approval_seen);
    EXPECT_FALSE(check().approval_on);
    EXPECT_EQ(text_of("screening_outcome"), "Physician first");
}

TEST_F(ScreeningPageTest, NoReleaseIsOfferedWhereNoneHelps) {
    HealthCheck pregnant = physician();
    pregnant.outcome = ScreeningOutcome::does_not_dive;
    open_page(pregnant);
    EXPECT_FALSE(visible("release_part"));
}

TEST_F(ScreeningPageTest, TheCentresOwnFormLeavesOnlyAnOutcome) {
    open_with_vault();
    click("open_own_form");
    EXPECT_EQ(vault_.asked, 0) << "nothing is sealed, so nothing is unlocked";
    EXPECT_FALSE(visible("question_form"));
    EXPECT_FALSE(child<QWidget>("record_check")->isEnabled());
    choose("own_outcome_combo", "Physician first");
    choose("own_today_combo", "Clear today");
    choose("signature_combo", "Signed on paper");
    choose("checked_by_combo", "Tomás");
    click("record_check");
    EXPECT_EQ(check(), (HealthCheck{ScreeningOutcome::physician_required, day(2026, 7, 3),
                                    own_form_edition, "Tomás Duarte", false, std::nullopt,
                                    TodayOutcome::clear, SignatureKind::on_paper}));
    EXPECT_TRUE(vault_.kept.empty());
    EXPECT_THAT(text_of("screening_details"), ::testing::HasSubstr("by the centre's own form"));
    // The next guest is likely to be seen by the same.
    click_row(1);
    click("open_own_form");
    choose("own_outcome_combo", "Clear");
    EXPECT_EQ(child<QComboBox>("checked_by_combo")->currentText(), QStringLiteral("Tomás Duarte"))
        << "not by whoever asked last year";
    click("close_check");
    EXPECT_EQ(guest(1).screening.checked_by, "Mara Lind") << "closing records nothing";
}

TEST_F(ScreeningPageTest, SealsFlaggedAnswersNoteContactAndSignature) {
    open_with_vault();
    click("open_questions");
    EXPECT_EQ(vault_.asked, 1);
    click("answer_lungs_yes");
    click("answer_lungs_asthma_yes");
    click("all_no_health");
    click("all_no_today");
    enter("emergency_contact_edit", "Jo, 000");
    child<QPlainTextEdit>("physician_note_edit")->setPlainText(QStringLiteral("Ask again"));
    choose("signature_combo", "Signed on the screen");
    click("record_check");
    EXPECT_THAT(text_of("check_message"), ::testing::HasSubstr("Nothing is signed yet"));
    EXPECT_EQ(check(), HealthCheck());
    sign();
    click("record_check");
    EXPECT_EQ(check().outcome, ScreeningOutcome::physician_required);
    EXPECT_EQ(check().signature, SignatureKind::on_screen);
    const auto sealed = vault_.contents("guest-1", HealthKind::screening);
    ASSERT_EQ(sealed.size(), 1U);
    const HealthAnswers answers = *read_answers(sealed[0]);
    EXPECT_EQ(answers.by_id, (std::map<std::string, Answer>{{"lungs", Answer::yes},
                                                            {"lungs.asthma", Answer::yes}}));
    EXPECT_EQ(vault_.contents("guest-1", HealthKind::emergency_contact),
              std::vector<std::string>{"Jo, 000"});
    EXPECT_EQ(vault_.contents("guest-1", HealthKind::physician_note),
              std::vector<std::string>{"Ask again"});
    const auto path = vault_.contents("guest-1", HealthKind::signature);
    ASSERT_EQ(path.size(), 1U);
    EXPECT_THAT(path[0], ::testing::MatchesRegex("M [0-9.]+ [0-9.]+( L [0-9.]+ [0-9.]+)+"));
}

TEST_F(ScreeningPageTest, SealsAllAnswersWhereTheCentreKeepsThem) {
    std::vector<AnswersKept> chosen;
    open_with_vault();
    QObject::connect(tab_.get(), &RosterTab::answers_kept_chosen, tab_.get(),
                     [&](AnswersKept kept) { chosen.push_back(kept); });
    answer_all_no();
    choose("answers_kept_combo", "All answers");
    EXPECT_EQ(chosen, std::vector<AnswersKept>{AnswersKept::all});
    click("record_check");
    const auto sealed = vault_.contents("guest-1", HealthKind::screening);
    ASSERT_EQ(sealed.size(), 1U);
    EXPECT_EQ(read_answers(sealed[0])->by_id.size(), 11U);
}

TEST_F(ScreeningPageTest, ShowsSealedAnswersOfThePersonWhenOpened) {
    HealthAnswers answers;
    answers.edition = present_edition;
    set_answer(answers, "lungs", Answer::yes);
    set_answer(answers, "lungs.asthma", Answer::yes);
    answers.today[1] = Answer::yes;
    vault_.keep("guest-1", HealthKind::screening, write_answers(answers), "Anna");
    vault_.keep("guest-1", HealthKind::physician_note, "May dive to 9 m");
    open_with_vault(physician());
    EXPECT_FALSE(visible("about_sealed"));
    click("open_questions");
    EXPECT_THAT(text_of("about_sealed"), ::testing::HasSubstr("1 July 2026 under the name Anna"));
    EXPECT_TRUE(child<QAbstractButton>("answer_lungs_asthma_yes")->isChecked());
    EXPECT_TRUE(child<QAbstractButton>("answer_alcohol_or_drugs_open")->isChecked())
        << "the day's questions are asked anew";
    EXPECT_EQ(child<QPlainTextEdit>("physician_note_edit")->toPlainText(),
              QStringLiteral("May dive to 9 m"));
    EXPECT_FALSE(child<QWidget>("record_check")->isEnabled()) << "nothing has changed";
}

TEST_F(ScreeningPageTest, WithTheVaultRefusedOnlyTheOutcomeIsKept) {
    vault_.refuses = true;
    open_with_vault();
    answer_all_no();
    EXPECT_EQ(vault_.asked, 1);
    EXPECT_THAT(text_of("sealing_remark"), ::testing::HasSubstr("The vault is not open"));
    EXPECT_FALSE(visible("physician_note_edit"));
    EXPECT_FALSE(visible("emergency_contact_edit"));
    EXPECT_EQ(child<QComboBox>("signature_combo")->findText(QStringLiteral("Signed on the screen")),
              -1);
    click("record_check");
    EXPECT_EQ(check().outcome, ScreeningOutcome::clear);
    EXPECT_TRUE(vault_.kept.empty());
}

TEST_F(ScreeningPageTest, ASessionThatIsNotKeptAsksForNoVault) {
    vault_.now = State::not_kept;
    open_with_vault();
    click("open_questions");
    EXPECT_EQ(vault_.asked, 0);
    EXPECT_THAT(text_of("sealing_remark"), ::testing::HasSubstr("not in the records"));
}

TEST_F(ScreeningPageTest, OpenAnswersVanishWhenTheVaultLocks) {
    open_with_vault();
    click("open_questions");
    click("answer_lungs_yes");
    click("answer_lungs_asthma_yes");
    enter("emergency_contact_edit", "Jo, 000");
    vault_.lock();
    EXPECT_FALSE(visible("check_panel"));
    EXPECT_THAT(text_of("screening_message"), ::testing::HasSubstr("locked"));
    EXPECT_FALSE(child<QAbstractButton>("answer_lungs_yes")->isChecked());
    EXPECT_EQ(line("emergency_contact_edit"), "");
    EXPECT_EQ(check(), HealthCheck());
    vault_.refuses = true;
    click("open_questions");
    EXPECT_FALSE(child<QAbstractButton>("answer_lungs_yes")->isChecked());
}

TEST_F(ScreeningPageTest, WhenSealingFailsNothingIsRecordedAtFirst) {
    open_with_vault();
    answer_all_no();
    vault_.fails = true;
    click("record_check");
    EXPECT_EQ(check(), HealthCheck());
    EXPECT_THAT(text_of("check_message"), ::testing::HasSubstr("could not be sealed"));
    EXPECT_THAT(child<QAbstractButton>("record_check")->text().toStdString(),
                ::testing::HasSubstr("outcome alone"));
    click("record_check");
    EXPECT_EQ(check().outcome, ScreeningOutcome::clear);
    EXPECT_TRUE(vault_.kept.empty());
}

TEST_F(ScreeningPageTest, AnswersWaitWhileAnotherGuestIsLookedAt) {
    open_page();
    click("open_questions");
    click("answer_lungs_yes");
    click_row(1);
    EXPECT_FALSE(visible("check_panel"));
    EXPECT_EQ(text_of("screening_outcome"), "Clear");
    click_row(0);
    EXPECT_TRUE(visible("check_panel"));
    EXPECT_TRUE(child<QAbstractButton>("answer_lungs_yes")->isChecked());
    click("close_check");
    click("open_questions");
    EXPECT_FALSE(child<QAbstractButton>("answer_lungs_yes")->isChecked());
}

TEST_F(ScreeningPageTest, AnswersNeverPassToAnotherSessionOrGuest) {
    open_page();
    click("open_questions");
    click("answer_lungs_yes");
    SessionFile file;
    file.session = session_with({"Cy"});
    file.session.guests[0].screening = {};
    ASSERT_TRUE(document_.open(file).has_value());
    EXPECT_FALSE(visible("check_panel"));
    click("open_questions");
    EXPECT_FALSE(child<QAbstractButton>("answer_lungs_yes")->isChecked());
    click("answer_lungs_yes");
    click("remove_guest");
    click("add_guest");
    EXPECT_EQ(guest(0).id, GuestId("guest-1")) << "the id is given again";
    click("page_screening");
    EXPECT_FALSE(visible("check_panel"));
}

TEST_F(ScreeningPageTest, ALastCheckIsOfferedWhileItCounts) {
    open_page();
    HealthCheck last = physician();
    last.outcome = ScreeningOutcome::clear;
    last.checked_on = day(2026, 5, 3);
    last.today = TodayOutcome::not_today;
    tab_->set_check_finder([&](const Guest&) { return std::optional(last); });
    EXPECT_EQ(text_of("last_check_text"),
              "Checked on 3 May 2026: clear. Has anything changed since?");
    click("last_check_take_over");
    HealthCheck taken = last;
    taken.today = TodayOutcome::unanswered;
    EXPECT_EQ(check(), taken);
    EXPECT_FALSE(visible("last_check_offer"));
    document_.undo_stack()->undo();
    EXPECT_EQ(check(), HealthCheck());
    click("last_check_anew");
    EXPECT_TRUE(visible("question_form"));
    EXPECT_FALSE(visible("last_check_offer"));
    click("close_check");

    last.checked_on = day(2025, 7, 4);
    tab_->set_check_finder([&](const Guest&) { return std::optional(last); });
    EXPECT_FALSE(visible("last_check_offer")) << "out of date on the day of the session";
    tab_->set_check_finder([](const Guest&) { return std::optional<HealthCheck>(); });
    EXPECT_FALSE(visible("last_check_offer"));
}

TEST_F(ScreeningPageTest, AVaultThatGoesBeforeThePageIsMissedByNobody) {
    open_page();
    {
        FakeHealthAccess brief;
        brief.now = State::open;
        tab_->set_health_access(&brief);
        click("open_questions");
    }
    click("all_no_health");
    click("record_check");
    EXPECT_EQ(check().outcome, ScreeningOutcome::clear);
}

}  // namespace
}  // namespace leadline::testing
