#include "stations/stations_page.h"

#include <QDataStream>
#include <QEvent>
#include <QIODevice>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/when_seen.h"
#include "find_bar.h"
#include "forms/field_form.h"
#include "holds_list.h"
#include "sketch/sketch_view.h"
#include "stations/pictures.h"
#include "stations_model.h"
#include "stations_view.h"
#include "theme/card.h"
#include "theme/segments.h"
#include "words/checks.h"
#include "words/things.h"
#include "words/values.h"
#include "working/working_panel.h"

namespace fayline {
namespace {

/// Pixels the working asks for.
constexpr int widestSide = 480;

DrawFormat formatFor(const SketchRoom& room, UnitSystem units) {
    return {room.size, room.letterMm, units, std::nullopt};
}

QStringList setTitles() {
    QStringList titles;
    for (int i = 0; i < columnSetCount; ++i) titles.append(titleOf(static_cast<ColumnSet>(i)));
    return titles;
}

QLabel* wrapped() {
    auto* label = new QLabel;
    label->setWordWrap(true);
    return label;
}

}  // namespace

StationsPage::StationsPage(Desk& desk, QWidget* parent)
    : Page(parent),
      desk_(desk),
      model_(new StationsModel(desk, this)),
      grid_(new StationsView(*model_)),
      profile_(new SketchView),
      section_(new SketchView),
      holds_(new HoldsList),
      working_(new WorkingPanel),
      find_(new FindBar),
      sets_(new Segments(setTitles())),
      sectionCard_(new Card),
      holdsCard_(new Card(tr("What holds here"))),
      gridOrWords_(new QStackedWidget),
      side_(new QStackedWidget),
      details_(new QScrollArea),
      all_(new QPushButton(tr("All &decisions here ›"))),
      missing_(wrapped()),
      line_(wrapped()),
      nothing_(wrapped()),
      across_(new QSplitter(Qt::Horizontal)),
      upright_(new QSplitter(Qt::Vertical)),
      follow_(new WhenSeen(desk, this, [this] { refresh(); })) {
    auto* profileCard = new Card(tr("Side profile"));
    profile_->setAccessibleName(tr("Side profile"));
    profile_->setFrameShape(QFrame::NoFrame);
    profile_->setMinimumHeight(120);
    profileCard->contents()->addWidget(profile_);
    profile_->setMaker([this](const SketchRoom& room) {
        return profileDrawing(profileOf(desk_), formatFor(room, speechOf(desk_.project()).units));
    });
    section_->setMaker([this](const SketchRoom& room) {
        return sectionDrawing(sectionOf(desk_, frame().toStdString()),
                              formatFor(room, speechOf(desk_.project()).units));
    });

    across_->addWidget(makeGrid());
    across_->addWidget(makeSide());
    across_->setStretchFactor(0, 1);
    across_->setStretchFactor(1, 0);
    across_->setSizes({920, 300});
    upright_->addWidget(profileCard);
    upright_->addWidget(across_);
    upright_->setStretchFactor(0, 0);
    upright_->setStretchFactor(1, 1);
    upright_->setSizes({240, 530});
    for (QSplitter* splitter : {across_, upright_}) {
        splitter->setHandleWidth(12);
        splitter->setChildrenCollapsible(false);
    }

    auto* caution = wrapped();
    const auto cautions = standingCautions();
    caution->setText(
        tr("%1 <a href=\"more\">All cautions</a>").arg(asText(cautions.front()).toHtmlEscaped()));
    caution->setForegroundRole(QPalette::PlaceholderText);
    connect(caution, &QLabel::linkActivated, this, &StationsPage::cautionsWanted);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 12, 12, 8);
    layout->setSpacing(8);
    layout->addWidget(upright_, 1);
    layout->addWidget(caution);
    setFirst(grid_);
    showSet(ColumnSet::overview);
    connectParts();
    refresh();
}

/// The side keeps room for its words, whatever their size.
void StationsPage::fitSide() {
    constexpr int letters = 43;
    side_->setMinimumWidth(fontMetrics().averageCharWidth() * letters);
    section_->setMinimumHeight(fontMetrics().height() * 9);
}

void StationsPage::changeEvent(QEvent* event) {
    Page::changeEvent(event);
    if (event->type() == QEvent::FontChange) fitSide();
}

void StationsPage::refresh() {
    model_->refresh();
    gridOrWords_->setCurrentIndex(model_->rowCount() > 0 ? 0 : 1);
    const auto& missing = desk_.results()->missing;
    missing_->setVisible(!missing.empty() && model_->rowCount() > 0);
    if (!missing.empty()) {
        QString words =
            tr("Still missing for margins: <a href=\"%1\">%2</a>")
                .arg(asText(missing.front().what), asText(missing.front().says).toHtmlEscaped());
        if (missing.size() > 1)
            words += QStringLiteral(", ") + tr("and %1 more").arg(missing.size() - 1);
        missing_->setText(words);
    }
    profile_->refresh();
    frameChosen(frame());
    working_->follow(desk_.results(), speechOf(desk_.project()));
}

void StationsPage::frameChosen(const QString& frame) {
    sectionCard_->setTitle(tr("Section"));
    holdsCard_->setTitle(frame.isEmpty() ? tr("What holds here")
                                         : tr("What holds at %1").arg(frame));
    section_->setAccessibleName(tr("Section at %1, looking aft").arg(frame));
    section_->refresh();
    all_->setVisible(!frame.isEmpty());
    holds_->setEmptyText(frame.isEmpty() ? tr("No frame is chosen.")
                                         : tr("Nothing holds at %1 yet.").arg(frame));
    holds_->setHolds(holdsAt(desk_, frame.toStdString()), desk_.results());
    if (!fromSketch_) profile_->setSelected(frame);
    if (side_->currentIndex() == detailsSide &&
        (detailForms_.empty() || detailForms_.front()->property("frame").toString() != frame))
        openDetails();
}

void StationsPage::sketchChose(const QString& id) {
    QString frame = id;
    for (const PlacedBolt& placed : desk_.results()->ballastBolts->placed) {
        if (placed.id == id.toStdString()) frame = asText(placed.frame);
    }
    if (frame.startsWith(QLatin1Char('F'))) frame = frame.section(QLatin1Char('.'), 0, 0);
    fromSketch_ = true;
    grid_->settleEditor();
    grid_->setFrame(frame);
    fromSketch_ = false;
}

void StationsPage::openWorking(const Check& check) {
    working_->showCheck(desk_.results(), check, speechOf(desk_.project()));
    showSide(workingSide);
    working_->setFocus();
}

bool StationsPage::showWorking() {
    const Check* worst =
        worstAtFrame(*desk_.results(), frame().toStdString(), speechOf(desk_.project()).basis);
    if (worst == nullptr) return false;
    openWorking(*worst);
    return true;
}

void StationsPage::openDetails() {
    for (FieldForm* form : detailForms_) form->commit();
    detailForms_.clear();
    const QString here = frame();
    auto* inner = new QWidget;
    auto* layout = new QVBoxLayout(inner);
    layout->setContentsMargins(0, 0, 6, 0);
    const auto add = [&](const QString& title, const char* section, const std::string& place,
                         const std::string& within = {}) {
        auto* form = new FieldForm(desk_, title, section, place, within);
        form->setProperty("frame", here);
        detailForms_.push_back(form);
        layout->addWidget(form);
        return form;
    };
    const int row = model_->rowOf(here);
    if (row >= 0) {
        const std::string frame = here.toStdString();
        const std::vector<std::string> bolts = model_->row(row).bolts;
        for (const std::string& bolt : bolts)
            add(tr("Ballast bolt %1").arg(asText(bolt)), "bolt", bolt);
        add(tr("Frame %1").arg(here), "frame", frame);
        add(tr("Floor at %1").arg(here), "floor", frame);
        const auto group = [&](const QString& title, const char* section, const std::string& name,
                               const char* side) {
            const std::string front = *side == '\0' ? "F#." : std::string("F#.") + side + ".";
            add(title, section, frame, front + name)->followKind(name, frame, side);
        };
        group(tr("Heel at %1, both sides").arg(here), "heel at", "heel", "");
        group(tr("Heel at %1, port only").arg(here), "heel at", "heel", "P");
        group(tr("Heel at %1, starboard only").arg(here), "heel at", "heel", "S");
        group(tr("Arms at %1, both").arg(here), "arm at", "arm", "");
        group(tr("Arm at %1, port only").arg(here), "arm at", "arm", "P");
        group(tr("Arm at %1, starboard only").arg(here), "arm at", "arm", "S");
        group(tr("Floor to keel at %1").arg(here), "floor_bolt at", "floor_bolt", "");
        group(tr("Planks at %1").arg(here), "plank at", "plank", "");
    }
    layout->addStretch(1);
    details_->setWidget(inner);
    showSide(detailsSide);
}

void StationsPage::showSide(Side which) {
    if (side_->currentIndex() == which) return;
    if (side_->currentIndex() == detailsSide) {
        for (FieldForm* form : detailForms_) form->commit();
    }
    side_->setCurrentIndex(which);
    // A working needs more room than a section.
    const QList<int> sizes = across_->sizes();
    const int wanted = which != sectionAndHolds ? std::max(widestSide, sizes.back())
                       : sideBefore_ > 0        ? sideBefore_
                                                : sizes.back();
    sideBefore_ = which == sectionAndHolds ? 0 : sideBefore_ > 0 ? sideBefore_ : sizes.back();
    across_->setSizes({sizes.front() + sizes.back() - wanted, wanted});
    if (which == sectionAndHolds) holds_->setFocus();
}

void StationsPage::say(const QString& says) {
    if (!says.isEmpty()) {
        line_->setText(says.toHtmlEscaped());
    } else if (model_->refusedCount() > 0) {
        line_->setText(counted(static_cast<int>(model_->refusedCount()),
                               tr("1 entry not taken: the old value stands."),
                               tr("%1 entries not taken: the old values stand.")) +
                       QStringLiteral(" <a href=\"refused\">%1</a>").arg(tr("Show")));
    } else {
        line_->setText(
            tr("Enter commits and goes down · F2 edits · Del goes back to the rule · Ctrl+D fills "
               "down · Ctrl+Enter sets all that is selected"));
    }
}

QString StationsPage::tipFor(const QString& id) const {
    const std::string place = id.toStdString();
    const Basis leading = speechOf(desk_.project()).basis;
    const bool frameItself = model_->rowOf(id) >= 0;
    const Check* worst = frameItself ? worstAtFrame(*desk_.results(), place, leading)
                                     : worstOf(*desk_.results(), {place}, leading);
    const QString name = frameItself ? id : thingTitle(place);
    return worst == nullptr ? name : tr("%1: %2").arg(name, checkLine(*worst));
}

void StationsPage::search(bool forward) {
    const auto found = grid_->find(find_->wanted(), forward);
    find_->say(found.says);
}

QString StationsPage::frame() const {
    return grid_->frame();
}
void StationsPage::setFrame(const QString& frame) {
    follow_->catchUp();
    grid_->setFrame(frame);
}

int StationsPage::setCount() {
    return columnSetCount;
}
QString StationsPage::setTitle(int set) {
    return titleOf(static_cast<ColumnSet>(set));
}

void StationsPage::showSet(ColumnSet set) {
    grid_->showSet(set);
    sets_->setChoice(static_cast<int>(set));
}

void StationsPage::settle() {
    grid_->settleEditor();
    for (FieldForm* form : detailForms_) form->commit();
}

bool StationsPage::does(PageCommand) const {
    return model_->rowCount() > 0;
}

void StationsPage::run(PageCommand command) {
    SketchView* sketch = section_->hasFocus() ? section_ : profile_;
    switch (command) {
        case PageCommand::copy:
            grid_->copy();
            return;
        case PageCommand::copyWithHeadings:
            grid_->copy(true);
            return;
        case PageCommand::paste:
            grid_->paste();
            return;
        case PageCommand::fillDown:
            grid_->fillDown();
            return;
        case PageCommand::find:
            find_->open();
            return;
        case PageCommand::findNext:
            search(true);
            return;
        case PageCommand::findPrevious:
            search(false);
            return;
        case PageCommand::zoomIn:
            sketch->zoomIn();
            return;
        case PageCommand::zoomOut:
            sketch->zoomOut();
            return;
        case PageCommand::zoomToFit:
            sketch->zoomToFit();
            return;
    }
}

QByteArray StationsPage::arrangement() const {
    QByteArray state;
    if (side_->currentIndex() != sectionAndHolds) return state;  // its width is not the user's
    QDataStream stream(&state, QIODevice::WriteOnly);
    stream << across_->saveState() << upright_->saveState() << grid_->widths();
    return state;
}

void StationsPage::arrange(const QByteArray& state) {
    QByteArray across, upright, columns;
    QDataStream stream(state);
    stream >> across >> upright >> columns;
    if (stream.status() != QDataStream::Ok) return;
    across_->restoreState(across);
    upright_->restoreState(upright);
    grid_->setWidths(columns);
    showSet(grid_->shownSet());
}

}  // namespace fayline
