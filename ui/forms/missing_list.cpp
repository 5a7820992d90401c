#include "missing_list.h"

#include <QVBoxLayout>

#include "theme/colours.h"
#include "words/values.h"

namespace fayline {
namespace {

constexpr std::size_t mostProblems = 12;

QString link(const QString& target, const QString& words) {
    return QStringLiteral("<a href=\"%1\">%2</a>")
        .arg(target.toHtmlEscaped(), words.toHtmlEscaped());
}

}  // namespace

MissingList::MissingList(Desk& desk, QWidget* parent)
    : Card(tr("What is still missing"), parent), desk_(desk), text_(new QLabel) {
    text_->setWordWrap(true);
    text_->setTextFormat(Qt::RichText);
    text_->setTextInteractionFlags(Qt::LinksAccessibleByMouse | Qt::LinksAccessibleByKeyboard);
    contents()->addWidget(text_);
    connect(text_, &QLabel::linkActivated, this, [this](const QString& target) {
        if (target == QLatin1String("stations")) {
            emit stationsWanted();
        } else {
            emit wanted(target);
        }
    });
    connect(&desk_, &Desk::resultsChanged, this, &MissingList::refresh);
    refresh();
}

void MissingList::refresh() {
    const Results& results = *desk_.results();
    QString html;
    if (results.missing.empty()) {
        html = tr("Nothing is missing for the ballast bolts. The margins stand on the %1 page.")
                   .arg(link(QStringLiteral("stations"), tr("Stations")));
    } else {
        html = tr("Decide these from the top; the first margins appear on the Stations page once "
                  "they are all there.") +
               QStringLiteral("<ol style=\"margin-top:4px;margin-bottom:0;\">");
        for (const Missing& missing : results.missing) {
            html +=
                QStringLiteral("<li>%1</li>").arg(link(asText(missing.what), asText(missing.says)));
        }
        html += QStringLiteral("</ol>");
    }
    Problems problems = desk_.unread();
    problems.insert(problems.end(), results.problems.begin(), results.problems.end());
    if (!problems.empty()) {
        html += QStringLiteral(
                    "<p style=\"margin:6px 0 2px 0;\"><b>%1</b></p><ul "
                    "style=\"margin-top:0;margin-bottom:0;\">")
                    .arg(tr("What does not fit").toHtmlEscaped());
        for (std::size_t i = 0; i < problems.size() && i < mostProblems; ++i) {
            html += QStringLiteral("<li>%1</li>")
                        .arg(link(asText(problems[i].where), namedSentence(problems[i])));
        }
        if (problems.size() > mostProblems)
            html += QStringLiteral("<li>%1</li>")
                        .arg(tr("and %1 more").arg(problems.size() - mostProblems).toHtmlEscaped());
        html += QStringLiteral("</ul>");
    }
    setTitle(results.missing.empty() && problems.empty() ? tr("Nothing is missing")
                                                         : tr("What is still missing"));
    text_->setText(html);
}

}  // namespace fayline
