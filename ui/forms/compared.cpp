#include "compared.h"

#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>
#include <array>

#include "desk/when_seen.h"
#include "words/values.h"

namespace fayline {
namespace {

QString percent(double ratio) {
    return QStringLiteral("%1 %").arg(ratio * 100.0, 0, 'f', 1);
}

QString apart(const std::optional<Mass>& worked, const std::optional<Mass>& stated) {
    if (!worked || !stated || stated->si() <= 0) return {};
    const double ratio = *worked / *stated - 1.0;
    return (ratio >= 0 ? QStringLiteral("+") : QStringLiteral("−")) + percent(std::abs(ratio));
}

QString shown(const std::optional<Mass>& mass, UnitSystem units) {
    return mass ? asText(displayMass(*mass, units, 4)) : QString();
}

}  // namespace

std::vector<Compared> comparedFigures(const Desk& desk) {
    const UnitSystem units = speechOf(desk.project()).units;
    const Results& results = *desk.results();
    const auto& body = results.afloat->body;
    const auto& ballast = results.structure->ballast;
    const auto statedBoat = desk.project().hull.displacement;
    const auto statedBallast = desk.project().ballast.mass;
    const std::optional<Mass> boat = body ? std::optional(body->displacement) : std::nullopt;
    const std::optional<Mass> cast = ballast ? std::optional(ballast->fromShape) : std::nullopt;

    std::vector<Compared> rows;
    rows.push_back({ComparedCard::tr("Displacement"), shown(boat, units), shown(statedBoat, units),
                    apart(boat, statedBoat)});
    rows.push_back({ComparedCard::tr("Ballast"), shown(cast, units), shown(statedBallast, units),
                    apart(cast, statedBallast)});
    const auto ratio = [](const std::optional<Mass>& part, const std::optional<Mass>& whole) {
        return part && whole && whole->si() > 0 ? percent(*part / *whole) : QString();
    };
    rows.push_back({ComparedCard::tr("Ballast ratio"),
                    ratio(cast, boat),
                    ratio(statedBallast, statedBoat),
                    {}});
    if (body) {
        rows.push_back(
            {ComparedCard::tr("Wetted length"), showPlace(body->wettedLength, units), {}, {}});
        rows.push_back({ComparedCard::tr("Centre of buoyancy, from FP"),
                        showPlace(body->centre.x, units),
                        {},
                        {}});
    }
    if (ballast)
        rows.push_back({ComparedCard::tr("Centre of ballast, from FP"),
                        showPlace(ballast->centre.x, units),
                        {},
                        {}});
    return rows;
}

ComparedCard::ComparedCard(Desk& desk, QWidget* parent)
    : Card(tr("Worked out against stated"), parent),
      desk_(desk),
      grid_(new QGridLayout),
      why_(new QLabel) {
    why_->setWordWrap(true);
    why_->setForegroundRole(QPalette::PlaceholderText);
    contents()->addLayout(grid_);
    contents()->addWidget(why_);
    grid_->setHorizontalSpacing(16);
    grid_->setColumnStretch(0, 1);
    const std::array<QString, 4> heads = {QString(), tr("worked out"), tr("stated"), tr("apart")};
    for (int i = 1; i < 4; ++i) {
        auto* head = new QLabel(heads[static_cast<std::size_t>(i)]);
        head->setForegroundRole(QPalette::PlaceholderText);
        grid_->addWidget(head, 0, i, Qt::AlignRight);
    }
    new WhenSeen(desk_, this, [this] { refresh(); });
    refresh();
}

void ComparedCard::refresh() {
    const std::vector<Compared> rows = comparedFigures(desk_);
    while (cells_.size() < rows.size()) {
        std::array<QLabel*, 4> line{};
        for (std::size_t i = 0; i < line.size(); ++i) {
            line[i] = new QLabel;
            line[i]->setTextInteractionFlags(Qt::TextSelectableByMouse);
            grid_->addWidget(line[i], static_cast<int>(cells_.size()) + 1, static_cast<int>(i),
                             i == 0 ? Qt::AlignLeft : Qt::AlignRight);
        }
        cells_.push_back(line);
    }
    for (std::size_t r = 0; r < cells_.size(); ++r) {
        const bool used = r < rows.size();
        const std::array<QString, 4> texts =
            used ? std::array<QString, 4>{rows[r].name, rows[r].worked, rows[r].stated,
                                          rows[r].apart}
                 : std::array<QString, 4>{};
        for (std::size_t i = 0; i < 4; ++i) {
            cells_[r][i]->setVisible(used);
            cells_[r][i]->setText(texts[i].isEmpty() && used && i > 0 && i < 3 ? QStringLiteral("–")
                                                                               : texts[i]);
        }
    }
    const QString why = asText(desk_.results()->afloat->why);
    why_->setText(why.isEmpty() ? QString() : tr("Not worked out afloat: %1.").arg(why));
    why_->setVisible(!why.isEmpty());
}

}  // namespace fayline
