#include "forms/hull_page.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QScrollArea>
#include <QVBoxLayout>

#include "backbone_card.h"
#include "compared.h"
#include "missing_list.h"
#include "offsets_card.h"
#include "theme/segments.h"
#include "words/things.h"

namespace fayline {
namespace {

constexpr int gap = 12;

/// Two columns of cards, as wide as each other.
QWidget* inColumns(const std::vector<QWidget*>& left, const std::vector<QWidget*>& right) {
    auto* both = new QWidget;
    auto* across = new QHBoxLayout(both);
    across->setContentsMargins(0, 0, 0, 0);
    across->setSpacing(gap);
    for (const auto* cards : {&left, &right}) {
        auto* column = new QVBoxLayout;
        column->setSpacing(gap);
        for (QWidget* card : *cards) column->addWidget(card);
        column->addStretch(1);
        across->addLayout(column, 1);
    }
    return both;
}

}  // namespace

HullPage::HullPage(Desk& desk, QWidget* parent)
    : Page(parent),
      scroll_(new QScrollArea),
      switch_(new Segments(
          {tr("Hull and timbers"), tr("Planking and fastenings"), tr("Joints of the backbone")})),
      offsets_(new OffsetsCard(desk)),
      backbone_(new BackboneCard(desk)) {
    auto* missing = new MissingList(desk);
    auto* inner = new QWidget;
    auto* all = new QVBoxLayout(inner);
    all->setContentsMargins(16, 16, 16, 16);
    all->setSpacing(gap);
    all->addWidget(missing);
    switch_->setAccessibleName(tr("Parts of this page"));
    all->addWidget(switch_);
    parts_ = {makeTimbers(desk), makeFastenings(desk), makeJoints()};
    for (QWidget* part : parts_) all->addWidget(part);
    all->addStretch(1);
    scroll_->setWidget(inner);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(scroll_);

    connect(switch_, &Segments::chosen, this,
            [this](int part) { showPart(static_cast<Part>(part)); });
    connect(missing, &MissingList::wanted, this, &HullPage::showField);
    connect(missing, &MissingList::stationsWanted, this, [this] { emit stationsWanted({}); });
    connect(offsets_, &OffsetsCard::stopped, this, &HullPage::stopped);
    connect(backbone_, &BackboneCard::stopped, this, &HullPage::stopped);
    showPart(timbers);
}

FieldForm* HullPage::form(Desk& desk, const QString& title, const char* section) {
    auto* card = new FieldForm(desk, title, section);
    forms_[static_cast<std::size_t>(making_)].push_back(card);
    return card;
}

QWidget* HullPage::makeTimbers(Desk& desk) {
    making_ = timbers;
    const std::vector<QWidget*> left{
        form(desk, tr("Hull"), "hull"), form(desk, tr("Keel timber"), "keel"),
        form(desk, tr("Frames"), "frames"), form(desk, tr("Floors, all frames"), "floors")};
    const std::vector<QWidget*> right{new ComparedCard(desk), form(desk, tr("Ballast"), "ballast"),
                                      form(desk, tr("Ballast bolts, all"), "bolts"), offsets_};
    return inColumns(left, right);
}

QWidget* HullPage::makeFastenings(Desk& desk) {
    making_ = fastenings;
    const auto group = [&](const char* name, const QString& title) {
        FieldForm* card = form(desk, title, name);
        card->followKind(name);
        return card;
    };
    const std::vector<QWidget*> left{form(desk, tr("Planking"), "planking"),
                                     group("heel", tr("Heels, all frames: each side")),
                                     group("arm", tr("Floor arms, all floors: each arm")),
                                     group("floor_bolt", tr("Floor to keel, all floors"))};
    const std::vector<QWidget*> right{group("plank", tr("Planks, each crossing of a frame")),
                                      group("butt", tr("Butts, each end")),
                                      group("hood", tr("Hood ends, each end")),
                                      group("garboard", tr("Garboard to keel, each side"))};
    return inColumns(left, right);
}

QWidget* HullPage::makeJoints() {
    return inColumns({backbone_}, {});
}

void HullPage::showPart(Part part) {
    settle();
    for (std::size_t i = 0; i < partCount; ++i)
        parts_[i]->setVisible(i == static_cast<std::size_t>(part));
    switch_->setChoice(part);
    const auto& forms = forms_[static_cast<std::size_t>(part)];
    setFirst(forms.empty() ? static_cast<QWidget*>(switch_)
                           : forms.front()->rows().front()->entry());
}

HullPage::Part HullPage::part() const {
    return static_cast<Part>(switch_->choice());
}

FieldRow* HullPage::row(const std::string& what) const {
    for (const auto& forms : forms_) {
        for (FieldForm* form : forms) {
            if (FieldRow* found = form->row(what)) return found;
        }
    }
    return backbone_->row(what);
}

/// The first field whose decision begins so, and the part of the page it stands in.
FieldRow* HullPage::firstRow(const std::string& front, Part& part) const {
    for (std::size_t i = 0; i < partCount; ++i) {
        for (const FieldForm* form : forms_[i]) {
            for (FieldRow* each : form->rows()) {
                if (each->what().rfind(front, 0) != 0) continue;
                part = static_cast<Part>(i);
                return each;
            }
        }
    }
    if (FieldRow* found = backbone_->row(front)) {
        part = joints;
        return found;
    }
    return nullptr;
}

void HullPage::showField(const QString& what) {
    std::string name = what.toStdString();
    constexpr std::string_view open = ".…";
    if (name.size() > open.size() &&
        name.compare(name.size() - open.size(), open.size(), open) == 0)
        name.resize(name.size() - open.size() + 1);
    Part there = timbers;
    if (FieldRow* found = firstRow(name, there)) {
        if (part() != there || !parts_[static_cast<std::size_t>(there)]->isVisibleTo(this))
            showPart(there);
        scroll_->widget()->layout()->activate();
        scroll_->ensureWidgetVisible(found, 40, 80);
        found->entry()->setFocus(Qt::OtherFocusReason);
        found->entry()->selectAll();
        return;
    }
    if (name.rfind("offsets", 0) == 0) {
        showPart(timbers);
        scroll_->ensureWidgetVisible(offsets_, 40, 40);
        offsets_->focusImport();
        return;
    }
    if (name.rfind("B.", 0) == 0 || name == "backbone") {
        showPart(joints);
        backbone_->focusName();
        return;
    }
    if (!name.empty() && name.front() == 'F')
        emit stationsWanted(what.section(QLatin1Char('.'), 0, 0));
}

void HullPage::settle() {
    for (const auto& forms : forms_) {
        for (FieldForm* form : forms) form->commit();
    }
    backbone_->commit();
}

bool HullPage::does(PageCommand) const {
    return false;
}
void HullPage::run(PageCommand) {}

bool HullPage::importOffsets(const QString& file) {
    return offsets_->importFrom(file);
}

}  // namespace fayline
