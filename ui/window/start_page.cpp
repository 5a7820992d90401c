#include "start_page.h"

#include <QCommandLinkButton>
#include <QFileInfo>
#include <QLabel>
#include <QVBoxLayout>

#include "derive/results.h"
#include "theme/card.h"
#include "words/values.h"

namespace fayline {

StartPage::StartPage(QWidget* parent)
    : QWidget(parent), recentTitle_(new QLabel(tr("Opened before"))), recent_(new QVBoxLayout) {
    auto* name = new QLabel(tr("Fayline"));
    QFont large = name->font();
    large.setPointSizeF(large.pointSizeF() * 2.2);
    large.setBold(true);
    name->setFont(large);
    auto* what =
        new QLabel(tr("Plans, proves and prints what holds a plank-on-frame hull together."));
    what->setWordWrap(true);

    auto* card = new Card;
    const auto button = [&](const QString& title, const QString& words,
                            void (StartPage::*wanted)()) {
        auto* made = new QCommandLinkButton(title, words);
        made->setIcon({});
        connect(made, &QAbstractButton::clicked, this, wanted);
        card->contents()->addWidget(made);
    };
    button(tr("&New project…"),
           tr("An empty one; the Hull page leads from there to the first margin."),
           &StartPage::newWanted);
    button(tr("New from o&ffsets…"), tr("From a table of offsets, comma separated."),
           &StartPage::offsetsWanted);
    button(tr("&Open…"), tr("A project file of your own."), &StartPage::openWanted);
    button(tr("&Demo hull…"),
           tr("Hollin, an invented cutter with everything decided, to look around in."),
           &StartPage::demoWanted);

    recentTitle_->setForegroundRole(QPalette::PlaceholderText);
    auto* caution = new QLabel(asText(standingCautions().front()));
    caution->setWordWrap(true);
    caution->setForegroundRole(QPalette::PlaceholderText);

    auto* column = new QVBoxLayout;
    column->setSpacing(10);
    column->addStretch(1);
    column->addWidget(name);
    column->addWidget(what);
    column->addSpacing(8);
    column->addWidget(card);
    column->addWidget(recentTitle_);
    column->addLayout(recent_);
    column->addStretch(2);
    column->addWidget(caution);
    auto* middle = new QWidget;
    middle->setMaximumWidth(640);
    middle->setLayout(column);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(24, 24, 24, 16);
    layout->addStretch(1);
    layout->addWidget(middle, 6);
    layout->addStretch(1);
    setRecent({});
}

void StartPage::setRecent(const QStringList& paths) {
    while (QLayoutItem* item = recent_->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    recentTitle_->setVisible(!paths.isEmpty());
    for (const QString& path : paths) {
        auto* link = new QLabel(QStringLiteral("<a href=\"%1\">%2</a> &nbsp; %3")
                                    .arg(path.toHtmlEscaped(),
                                         QFileInfo(path).completeBaseName().toHtmlEscaped(),
                                         QFileInfo(path).absolutePath().toHtmlEscaped()));
        link->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
        link->setToolTip(path);
        link->setForegroundRole(QPalette::PlaceholderText);
        connect(link, &QLabel::linkActivated, this, &StartPage::recentWanted);
        recent_->addWidget(link);
    }
}

}  // namespace fayline
