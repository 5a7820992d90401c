#include "metal/metal_page.h"

#include <QClipboard>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QSaveFile>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>

#include "derive/paper.h"
#include "desk/when_seen.h"
#include "metal_model.h"
#include "quantity/csv.h"
#include "theme/card.h"
#include "theme/row_delegate.h"
#include "words/values.h"

namespace fayline {
namespace {

QLabel* wrapped() {
    auto* label = new QLabel;
    label->setWordWrap(true);
    return label;
}

}  // namespace

MetalPage::MetalPage(Desk& desk, QWidget* parent)
    : Page(parent),
      desk_(desk),
      model_(new MetalModel(this)),
      table_(new QTableView),
      tableOrWords_(new QStackedWidget),
      totals_(wrapped()),
      rules_(wrapped()),
      save_(new QPushButton(tr("Save as &CSV…"))) {
    table_->setModel(model_);
    makeReadingTable(*table_);
    table_->setItemDelegate(new RowDelegate(table_));
    table_->horizontalHeader()->setSectionResizeMode(MetalModel::use, QHeaderView::Stretch);
    table_->setAccessibleName(tr("What to order"));
    auto* nothing = wrapped();
    nothing->setAlignment(Qt::AlignCenter);
    nothing->setText(
        tr("Nothing to order yet: no fastening has a place. Decide them on the "
           "<a href=\"heel.kind\">Hull page</a>, or frame by frame on the Stations page."));
    connect(nothing, &QLabel::linkActivated, this, &MetalPage::hullWanted);
    tableOrWords_->addWidget(table_);
    tableOrWords_->addWidget(nothing);
    QFont bold = totals_->font();
    bold.setBold(true);
    totals_->setFont(bold);
    totals_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    rules_->setForegroundRole(QPalette::PlaceholderText);
    connect(save_, &QPushButton::clicked, this, &MetalPage::askWhere);

    auto* card = new Card(tr("What to order"));
    auto* head = new QHBoxLayout;
    head->addWidget(totals_, 1);
    head->addWidget(save_, 0, Qt::AlignTop);
    card->contents()->addLayout(head);
    card->contents()->addWidget(tableOrWords_, 1);
    card->contents()->addWidget(rules_);
    auto* caution = wrapped();
    caution->setText(tr("%1 <a href=\"more\">All cautions</a>")
                         .arg(asText(standingCautions().front()).toHtmlEscaped()));
    caution->setForegroundRole(QPalette::PlaceholderText);
    connect(caution, &QLabel::linkActivated, this, &MetalPage::cautionsWanted);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(12, 12, 12, 8);
    layout->setSpacing(8);
    layout->addWidget(card, 1);
    layout->addWidget(caution);
    setFirst(table_);
    new WhenSeen(desk_, this, [this] { refresh(); });
}

void MetalPage::changeEvent(QEvent* event) {
    Page::changeEvent(event);
    if (event->type() != QEvent::FontChange) return;
    QFont bold = font();
    bold.setBold(true);
    totals_->setFont(bold);
    fitColumns();
}

QString MetalPage::totals() const {
    const TakeOff& takeOff = model_->takeOff();
    if (takeOff.lines.empty()) return {};
    const UnitSystem units = speechOf(desk_.project()).units;
    const QString counts = tr("%1 fastenings in the hull, %2 to order with spares")
                               .arg(takeOff.count)
                               .arg(takeOff.order);
    if (takeOff.mass)
        return tr("%1. Weight %2.").arg(counts, asText(displayMass(*takeOff.mass, units)));
    const auto unknown = std::count_if(takeOff.lines.begin(), takeOff.lines.end(),
                                       [](const TakeOffLine& line) { return !line.mass; });
    return tr("%1. Weight of what is known %2; %3 without a weight.")
        .arg(counts, asText(displayMass(takeOff.knownMass, units)),
             counted(static_cast<int>(unknown), tr("1 line"), tr("%1 lines")));
}

void MetalPage::refresh() {
    TakeOff takeOff = takeOffOf(desk_.project(), *desk_.results(), desk_.catalogue());
    const UnitSystem units = speechOf(desk_.project()).units;
    if (takeOff == model_->takeOff() && units == model_->units()) return;
    const int row = std::max(0, table_->currentIndex().row());
    model_->show(std::move(takeOff), units);
    const bool empty = model_->rowCount() == 0;
    tableOrWords_->setCurrentIndex(empty ? 1 : 0);
    save_->setEnabled(!empty);
    totals_->setText(totals());
    QStringList rules;
    for (const std::string& rule : model_->takeOff().rules) rules.append(asText(rule));
    rules_->setText(rules.join(QLatin1Char(' ')));
    rules_->setVisible(!empty);
    if (!empty) table_->setCurrentIndex(model_->index(std::min(row, model_->rowCount() - 1), 0));
    fitColumns();
}

void MetalPage::fitColumns() {
    table_->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 10);
    const int least = fontMetrics().averageCharWidth() * 8;
    for (int column = 0; column < model_->columnCount(); ++column) {
        if (column == MetalModel::use) continue;
        const QString head = model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        int wide = fontMetrics().horizontalAdvance(head);
        for (int row = 0; row < model_->rowCount(); ++row) {
            wide = std::max(wide, fontMetrics().horizontalAdvance(
                                      model_->index(row, column).data(Qt::DisplayRole).toString()));
        }
        table_->setColumnWidth(column, std::max(least, wide + 24));
    }
}

void MetalPage::copy(bool headings) {
    QString tabbed;
    std::string csv;
    const auto add = [&](auto cell) {
        QStringList texts;
        std::vector<std::string> cells;
        for (int column = 0; column < model_->columnCount(); ++column) {
            texts.append(cell(column));
            cells.push_back(texts.back().toStdString());
        }
        tabbed += texts.join(QLatin1Char('\t')) + QLatin1Char('\n');
        csv += csvLine(cells);
    };
    if (headings)
        add([&](int c) {
            return model_->headerData(c, Qt::Horizontal, Qt::DisplayRole).toString();
        });
    QModelIndexList rows = table_->selectionModel()->selectedRows();
    std::sort(rows.begin(), rows.end());
    for (const QModelIndex& row : std::as_const(rows))
        add([&](int c) { return model_->index(row.row(), c).data(Qt::DisplayRole).toString(); });
    auto* mime = new QMimeData;
    mime->setText(tabbed);
    mime->setData(QStringLiteral("text/csv"), QByteArray::fromStdString(csv));
    QGuiApplication::clipboard()->setMimeData(mime);
}

bool MetalPage::does(PageCommand command) const {
    return (command == PageCommand::copy || command == PageCommand::copyWithHeadings) &&
           model_->rowCount() > 0;
}

void MetalPage::run(PageCommand command) {
    copy(command == PageCommand::copyWithHeadings);
}

void MetalPage::askWhere() {
    const QFileInfo project(desk_.path());
    const QString path = QFileDialog::getSaveFileName(
        window(), tr("Where to keep the list"),
        project.absolutePath() + QLatin1Char('/') + project.completeBaseName() + tr(", metal.csv"),
        tr("Comma separated text (*.csv)"));
    if (!path.isEmpty()) saveCsv(path);
}

bool MetalPage::saveCsv(const QString& path) {
    QSaveFile file(path);
    const std::string text = metalCsv(model_->takeOff());
    const auto size = static_cast<qint64>(text.size());
    if (!file.open(QIODevice::WriteOnly) || file.write(text.data(), size) != size ||
        !file.commit()) {
        emit stopped(tr("%1 was not written: %2.").arg(path, file.errorString()), {});
        return false;
    }
    emit done(tr("The list stands in %1.").arg(path));
    return true;
}

}  // namespace fayline
