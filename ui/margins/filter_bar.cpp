#include "filter_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <algorithm>
#include <set>

#include "theme/status.h"
#include "theme/still_box.h"
#include "words/checks.h"
#include "words/things.h"

namespace fayline {
namespace {

void fill(QComboBox& box, const std::vector<std::pair<QString, QVariant>>& items) {
    bool same = box.count() == static_cast<int>(items.size());
    for (int i = 0; same && i < box.count(); ++i)
        same = box.itemText(i) == items[static_cast<std::size_t>(i)].first;
    if (same) return;
    const QSignalBlocker quiet(box);
    const QVariant chosen = box.currentData();
    box.clear();
    for (const auto& [words, value] : items) box.addItem(words, value);
    box.setCurrentIndex(std::max(0, box.findData(chosen)));
}

}  // namespace

FilterBar::FilterBar(QWidget* parent)
    : QWidget(parent),
      text_(new QLineEdit),
      group_(new StillBox),
      case_(new StillBox),
      status_(new StillBox),
      basis_(new StillBox),
      says_(new QLabel) {
    text_->setPlaceholderText(tr("Find: F9, bolt, washer …"));
    text_->setAccessibleName(tr("Find in the margins"));
    text_->setClearButtonEnabled(true);
    group_->setAccessibleName(tr("Group"));
    case_->setAccessibleName(tr("Load case"));
    status_->setAccessibleName(tr("Status"));
    basis_->setAccessibleName(tr("Basis"));
    status_->addItem(tr("All statuses"));
    for (const Status status : {Status::isShort, Status::near, Status::unknown, Status::outside,
                                Status::ok, Status::unloaded})
        status_->addItem(statusWord(status), static_cast<int>(status));
    basis_->addItem(tr("Both bases"));
    basis_->addItem(tr("US and metal"), static_cast<int>(Basis::us));
    basis_->addItem(tr("Eurocode 5 and metal"), static_cast<int>(Basis::ec5));
    for (QComboBox* box : {group_, case_, status_, basis_}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        connect(box, &QComboBox::currentIndexChanged, this, &FilterBar::changed);
    }
    case_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    case_->setMinimumContentsLength(22);
    says_->setForegroundRole(QPalette::PlaceholderText);
    connect(text_, &QLineEdit::textChanged, this, &FilterBar::changed);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(6);
    layout->addWidget(text_, 1);
    for (QComboBox* box : {group_, case_, status_, basis_}) layout->addWidget(box);
    layout->addWidget(says_);
    offer(Results{});
}

void FilterBar::offer(const Results& results) {
    std::set<std::string_view> present;
    std::set<LoadCase> cases;
    for (const auto& set : results.checkSets) {
        for (const Basis basis : {Basis::us, Basis::ec5}) {
            for (const std::size_t place : set->worst(basis))
                present.insert(set->checks[place].group);
        }
        std::optional<LoadCase> last;
        for (const Check& check : set->checks) {
            if (check.loadCase != last) cases.insert(check.loadCase);
            last = check.loadCase;
        }
    }
    std::vector<std::pair<QString, QVariant>> groups{{tr("All groups"), QVariant()}};
    for (const std::string_view group : present)
        groups.emplace_back(groupWords(std::string(group)), asText(group));
    fill(*group_, groups);
    std::vector<std::pair<QString, QVariant>> loads{{tr("All load cases"), QVariant()}};
    for (const LoadCase loadCase : cases)
        loads.emplace_back(asText(titleOf(loadCase)), static_cast<int>(loadCase));
    fill(*case_, loads);
}

MarginFilter FilterBar::filter() const {
    MarginFilter filter;
    filter.group = group_->currentData().toString().toStdString();
    if (const QVariant chosen = case_->currentData(); chosen.isValid())
        filter.loadCase = static_cast<LoadCase>(chosen.toInt());
    if (const QVariant chosen = status_->currentData(); chosen.isValid())
        filter.status = static_cast<Status>(chosen.toInt());
    if (const QVariant chosen = basis_->currentData(); chosen.isValid())
        filter.basis = static_cast<Basis>(chosen.toInt());
    filter.text = text_->text();
    return filter;
}

void FilterBar::setFilter(const MarginFilter& filter) {
    {
        const QSignalBlocker quiet(this);
        const auto choose = [](QComboBox* box, const QVariant& value) {
            box->setCurrentIndex(std::max(0, value.isValid() ? box->findData(value) : 0));
        };
        choose(group_, filter.group.empty() ? QVariant() : QVariant(asText(filter.group)));
        choose(case_, filter.loadCase ? QVariant(static_cast<int>(*filter.loadCase)) : QVariant());
        choose(status_, filter.status ? QVariant(static_cast<int>(*filter.status)) : QVariant());
        choose(basis_, filter.basis ? QVariant(static_cast<int>(*filter.basis)) : QVariant());
        text_->setText(filter.text);
    }
    emit changed();
}

void FilterBar::clear() {
    setFilter({});
}

void FilterBar::say(const QString& words) {
    says_->setText(words);
}

void FilterBar::focusText() {
    text_->setFocus(Qt::ShortcutFocusReason);
    text_->selectAll();
}

void FilterBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        clear();
        emit left();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter ||
        event->key() == Qt::Key_Down) {
        emit left();
        return;
    }
    QWidget::keyPressEvent(event);
}

}  // namespace fayline
