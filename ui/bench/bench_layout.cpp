// How the panel is laid out: fields on the left, results on the right, deeds above.

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QTableView>
#include <QTextBrowser>
#include <QVBoxLayout>

#include "bench/bench_page.h"
#include "bench_lines.h"
#include "bench_row.h"
#include "bench_work.h"
#include "sheet/joint_picture.h"
#include "sketch/sketch_view.h"
#include "theme/card.h"
#include "theme/row_delegate.h"
#include "theme/segments.h"
#include "words/values.h"

namespace fayline {

QWidget* BenchPage::makeDeeds() {
    auto* deeds = new QWidget;
    auto* across = new QHBoxLayout(deeds);
    across->setContentsMargins(0, 0, 0, 0);
    auto* words = new QLabel(tr("One joint by itself. Nothing here touches the hull."));
    words->setForegroundRole(QPalette::PlaceholderText);
    words->setWordWrap(true);
    const auto button = [&](const QString& text, const QString& tip, auto deed) {
        auto* made = new QPushButton(text);
        made->setToolTip(tip);
        connect(made, &QPushButton::clicked, this, deed);
        across->addWidget(made);
    };
    across->addWidget(words, 1);
    button(tr("Ne&w"), tr("Begin again with the first example"), &BenchPage::startAfresh);
    button(tr("&Load…"), tr("A joint file, as fayline joint reads it"), &BenchPage::askAndLoad);
    button(tr("&Save…"), tr("As a joint file"), &BenchPage::askAndSave);
    button(tr("From the &hull…"), tr("Take the joint of one fastening of the hull"),
           &BenchPage::askAndTake);
    button(tr("&Copy result"), tr("As text, with all workings"),
           [this] { QApplication::clipboard()->setText(plainResult()); });
    button(tr("Calculation &record…"), tr("Everything needed to check it by hand, as PDF or text"),
           &BenchPage::askAndSaveRecord);
    button(tr("&Print…"), tr("Print the calculation record"), &BenchPage::askAndPrint);
    return deeds;
}

BenchRow* BenchPage::addRow(const BenchField& field, const std::string& path, QVBoxLayout* to) {
    auto* row = new BenchRow(field, path, *setup_.catalogue);
    to->addWidget(row);
    connect(row, &BenchRow::typed, this,
            [this, row](const std::string& text) { takeTyped(row, text, false); });
    connect(row, &BenchRow::finished, this,
            [this, row](const std::string& text) { takeTyped(row, text, true); });
    connect(row, &BenchRow::abandoned, this, [this, row] {
        work_->takeBack(row->path());
        work_->pause();
        row->revert();
    });
    return row;
}

QWidget* BenchPage::makeFields() {
    auto* inner = new QWidget;
    auto* all = new QVBoxLayout(inner);
    all->setContentsMargins(0, 0, 6, 0);
    all->setSpacing(12);
    auto* fastener = new Card(tr("Fastening"));
    for (const BenchField& field : fastenerFields())
        rows_.push_back(addRow(field, field.key, fastener->contents()));
    all->addWidget(fastener);
    auto* load = new Card(tr("Load and service"));
    for (const BenchField& field : loadFields())
        rows_.push_back(addRow(field, field.key, load->contents()));
    all->addWidget(load);
    membersCard_ = new Card(tr("Members, head side first"));
    members_ = new QWidget;
    membersAt_ = new QVBoxLayout(members_);
    membersAt_->setContentsMargins(0, 0, 0, 0);
    membersCard_->contents()->addWidget(members_);
    auto* add = new QPushButton(tr("Add a &member"));
    connect(add, &QPushButton::clicked, this, &BenchPage::addMember);
    auto* addAt = new QHBoxLayout;
    addAt->addWidget(add);
    addAt->addStretch(1);
    membersCard_->contents()->addLayout(addAt);
    all->addWidget(membersCard_);
    auto* more = new QPushButton(tr("Show measured, declared and rare figures"));
    more->setCheckable(true);
    connect(more, &QPushButton::toggled, this, [this](bool on) {
        moreShown_ = on;
        followRows();
    });
    all->addWidget(more);
    all->addStretch(1);
    auto* scroll = new QScrollArea;
    scroll->setWidget(inner);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setMinimumWidth(fontMetrics().averageCharWidth() * 46);
    fields_ = scroll;
    return scroll;
}

/// One block of fields for each member; made anew when their number changes.
void BenchPage::makeMemberCards() {
    const std::size_t count = work_->draft().members.size();
    if (count == memberCount_) return;
    memberCount_ = count;
    for (BenchRow* row : memberRows_) row->disconnect(this);
    memberRows_.clear();
    while (QLayoutItem* item = membersAt_->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    for (std::size_t i = 0; i < count; ++i) {
        const int number = static_cast<int>(i);
        auto* block = new QWidget;
        auto* upright = new QVBoxLayout(block);
        upright->setContentsMargins(0, 0, 0, 6);
        auto* head = new QHBoxLayout;
        auto* title = new QLabel(tr("<b>%1</b>").arg(tr("Member %1").arg(number + 1)));
        head->addWidget(title, 1);
        const auto button = [&](const QString& words, const QString& name, bool possible,
                                auto deed) {
            auto* made = new QPushButton(words);
            made->setAccessibleName(name);
            made->setToolTip(name);
            made->setEnabled(possible);
            if (words.size() == 1) made->setFixedWidth(fontMetrics().averageCharWidth() * 6);
            connect(made, &QPushButton::clicked, this, deed);
            head->addWidget(made);
        };
        button(tr("↑"), tr("Member %1 nearer to the head").arg(number + 1), i > 0,
               [this, number] { moveMember(number, -1); });
        button(tr("↓"), tr("Member %1 farther from the head").arg(number + 1), i + 1 < count,
               [this, number] { moveMember(number, 1); });
        button(tr("Remove"), tr("Remove member %1").arg(number + 1), count > 2,
               [this, number] { removeMember(number); });
        upright->addLayout(head);
        for (const BenchField& field : memberFields()) {
            BenchField own = field;
            own.label = field.label;
            memberRows_.push_back(
                addRow(own, "members[" + std::to_string(i) + "]." + field.key, upright));
            memberRows_.back()->entry()->setAccessibleName(
                tr("%1 of member %2").arg(field.label).arg(number + 1));
        }
        membersAt_->addWidget(block);
    }
}

QWidget* BenchPage::makeResults() {
    auto* top = new Card;
    picture_->setAccessibleName(tr("The joint cut open, head on the left"));
    picture_->setFrameShape(QFrame::NoFrame);
    picture_->setMinimumHeight(130);
    picture_->setMaker([this](const SketchRoom& room) {
        return work_->last() ? jointDrawing(work_->last()->named.joint,
                                            {room.size, room.letterMm, work_->units()})
                             : Drawing{room.size, {}, {}, {}, false};
    });
    verdict_->setTextFormat(Qt::RichText);
    verdict_->setAccessibleName(tr("What governs"));
    pending_->setForegroundRole(QPalette::Text);
    pending_->setAccessibleName(tr("What is still needed"));
    top->contents()->addWidget(picture_, 1);
    top->contents()->addWidget(verdict_);
    top->contents()->addWidget(pending_);
    auto* middle = new Card;
    table_->setModel(model_);
    makeReadingTable(*table_);
    table_->setItemDelegate(new RowDelegate(table_));
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setAccessibleName(tr("Limit states, both bases"));
    table_->setMinimumHeight(120);
    table_->horizontalHeader()->setStretchLastSection(true);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &BenchPage::showText);
    middle->contents()->addWidget(table_);
    auto* below = new Card;
    parts_->setAccessibleName(tr("What is shown below the table"));
    text_->setOpenLinks(false);
    text_->setFrameShape(QFrame::NoFrame);
    text_->setAccessibleName(tr("Working"));
    text_->viewport()->setAutoFillBackground(false);
    below->contents()->addWidget(parts_);
    below->contents()->addWidget(text_, 1);
    connect(parts_, &Segments::chosen, this, &BenchPage::showText);
    for (Card* card : {top, middle, below}) upright_->addWidget(card);
    upright_->setSizes({250, 240, 280});
    upright_->setHandleWidth(12);
    upright_->setChildrenCollapsible(false);
    return upright_;
}

}  // namespace fayline
