#include "forms/hull_page.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QScrollArea>
#include <QVBoxLayout>

#include "compared.h"
#include "missing_list.h"
#include "offsets_card.h"

namespace fayline {

HullPage::HullPage(Desk& desk, QWidget* parent)
    : Page(parent), scroll_(new QScrollArea), offsets_(new OffsetsCard(desk)) {
    auto* missing = new MissingList(desk);
    auto* left = new QVBoxLayout;
    auto* right = new QVBoxLayout;
    const auto form = [&](QVBoxLayout* column, const QString& title, const char* section) {
        auto* card = new FieldForm(desk, title, section);
        forms_.push_back(card);
        column->addWidget(card);
    };
    form(left, tr("Hull"), "hull");
    form(left, tr("Keel timber"), "keel");
    form(left, tr("Frames"), "frames");
    form(left, tr("Floors, all frames"), "floors");
    right->addWidget(new ComparedCard(desk));
    form(right, tr("Ballast"), "ballast");
    form(right, tr("Ballast bolts, all"), "bolts");
    right->addWidget(offsets_);
    for (QVBoxLayout* column : {left, right}) {
        column->setSpacing(12);
        column->addStretch(1);
    }

    auto* columns = new QHBoxLayout;
    columns->setSpacing(12);
    columns->addLayout(left, 1);
    columns->addLayout(right, 1);
    auto* inner = new QWidget;
    auto* all = new QVBoxLayout(inner);
    all->setContentsMargins(16, 16, 16, 16);
    all->setSpacing(12);
    all->addWidget(missing);
    all->addLayout(columns);
    scroll_->setWidget(inner);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(scroll_);

    setFocusProxy(forms_.front()->rows().front()->entry());
    connect(missing, &MissingList::wanted, this, &HullPage::showField);
    connect(missing, &MissingList::stationsWanted, this, [this] { emit stationsWanted({}); });
    connect(offsets_, &OffsetsCard::stopped, this, &HullPage::stopped);
}

FieldRow* HullPage::row(const std::string& what) const {
    for (FieldForm* form : forms_) {
        if (FieldRow* found = form->row(what)) return found;
    }
    return nullptr;
}

void HullPage::showField(const QString& what) {
    const std::string name = what.toStdString();
    if (FieldRow* found = row(name)) {
        scroll_->ensureWidgetVisible(found, 40, 80);
        found->entry()->setFocus(Qt::OtherFocusReason);
        found->entry()->selectAll();
        return;
    }
    if (name.rfind("offsets", 0) == 0) {
        scroll_->ensureWidgetVisible(offsets_, 40, 40);
        offsets_->focusImport();
        return;
    }
    if (!name.empty() && name.front() == 'F')
        emit stationsWanted(what.section(QLatin1Char('.'), 0, 0));
}

void HullPage::settle() {
    for (FieldForm* form : forms_) form->commit();
}

bool HullPage::does(PageCommand) const {
    return false;
}
void HullPage::run(PageCommand) {}

bool HullPage::importOffsets(const QString& file) {
    return offsets_->importFrom(file);
}

}  // namespace fayline
