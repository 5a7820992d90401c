#include "missing_list.h"

#include <QStringList>
#include <QVBoxLayout>
#include <algorithm>

#include "desk/when_seen.h"
#include "theme/colours.h"
#include "words/fastenings.h"
#include "words/things.h"
#include "words/values.h"

namespace fayline {
namespace {

constexpr std::size_t mostProblems = 12;

QString link(const QString& target, const QString& words) {
    return QStringLiteral("<a href=\"%1\">%2</a>")
        .arg(target.toHtmlEscaped(), words.toHtmlEscaped());
}

/// What is missing, a joint of the backbone by its name: "Stem to keel: how much timber …".
QString words(const Missing& missing) {
    QString says = asText(missing.says);
    const qsizetype colon = says.indexOf(QLatin1Char(':'));
    if (says.startsWith(QLatin1String("B.")) && colon > 2) {
        QString joint = says.mid(2, colon - 2).replace(QLatin1Char('_'), QLatin1Char(' '));
        joint[0] = joint[0].toUpper();
        says = joint + says.mid(colon);
    }
    return says;
}

/// Whole groups of the hull that have no fastenings yet and of which nothing was said above.
QString undecidedGroups(const Desk& desk) {
    const Results& results = *desk.results();
    if (results.structure->frames.empty()) return {};
    QStringList links;
    const auto said = [&](const std::string& front) {
        return std::any_of(results.missing.begin(), results.missing.end(),
                           [&](const Missing& m) { return m.what.rfind(front + ".", 0) == 0; });
    };
    for (const char* group : {"heel", "arm", "floor_bolt", "plank", "butt", "hood", "garboard"}) {
        const auto open = undecidedOf(standingAt(desk.project(), group, {}, {}));
        if (open.empty() || said(group)) continue;
        links.append(link(QString::fromLatin1(group) + QLatin1Char('.') + asText(open.front()),
                          groupWords(group)));
    }
    const PlankingDecisions& planking = desk.project().planking;
    if (!said("planking") && (!planking.wood || !planking.thickness || !planking.strakes)) {
        links.prepend(link(!planking.thickness ? QStringLiteral("planking.thickness")
                           : !planking.strakes ? QStringLiteral("planking.strakes")
                                               : QStringLiteral("planking.wood"),
                           MissingList::tr("Planking")));
    }
    if (desk.project().backbone.empty())
        links.append(link(QStringLiteral("backbone"), MissingList::tr("Backbone's joints")));
    return links.join(QStringLiteral(" · "));
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
    new WhenSeen(desk_, this, [this] { refresh(); });
    refresh();
}

void MissingList::refresh() {
    const Results& results = *desk_.results();
    QString html;
    if (results.missing.empty() && results.structure->frames.empty()) {
        html =
            tr("Nothing is missing, but there are no frames, and most of what holds a hull stands "
               "at one: %1.")
                .arg(link(QStringLiteral("frames.count"), tr("how many frames")));
    } else if (results.missing.empty()) {
        html = tr("Nothing is missing for margins. They stand on the %1 page, frame by frame.")
                   .arg(link(QStringLiteral("stations"), tr("Stations")));
    } else {
        html =
            (results.worstFirst.empty()
                 ? tr("Decide these from the top. Margins appear on the Stations page as soon as "
                      "there is enough to work one out.")
                 : tr("Margins already stand on the %1 page; each of these brings more of them.")
                       .arg(link(QStringLiteral("stations"), tr("Stations")))) +
            QStringLiteral("<ol style=\"margin-top:4px;margin-bottom:0;\">");
        for (const Missing& missing : results.missing) {
            html += QStringLiteral("<li>%1</li>").arg(link(asText(missing.what), words(missing)));
        }
        html += QStringLiteral("</ol>");
    }
    if (const QString groups = undecidedGroups(desk_); !groups.isEmpty()) {
        html += QStringLiteral("<p style=\"margin:6px 0 2px 0;\"><b>%1</b> %2</p>")
                    .arg(tr("Still to decide, for all frames:").toHtmlEscaped(), groups);
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
