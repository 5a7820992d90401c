#include "bench_lines.h"

#include <algorithm>

#include "check/fastening.h"
#include "joint/remark.h"
#include "theme/status.h"
#include "words/checks.h"

namespace fayline {
namespace {

BenchLine& lineFor(std::vector<BenchLine>& lines, LimitStateKind kind) {
    const auto found = std::find_if(lines.begin(), lines.end(),
                                    [&](const BenchLine& line) { return line.kind == kind; });
    if (found != lines.end()) return *found;
    lines.emplace_back();
    lines.back().kind = kind;
    return lines.back();
}

[[maybe_unused]] QString sentenceOf(const Remark& remark) {
    return asText(textOf(remark));
}
[[maybe_unused]] QString sentenceOf(const std::string& text) {
    return asText(text);
}

Check checkOf(const LimitState& state, const std::optional<JointLoad>& load) {
    const auto demand = load ? demandFor(state.kind, *load) : std::nullopt;
    // No class stands behind a single joint: its target is to be met, no more.
    Check check = compare(demand.value_or(Force{}), state, 1.0);
    if (!demand) check.demand.reset();
    return check;
}

QString nameOfLine(const BenchLine& line) {
    if (line.us || line.ec5) return stateWords(line.any());
    Check check;
    check.limitState = line.kind;
    return stateWords(check);
}

/// The place of a line in its table's own order, for a basis.
const std::optional<Check>& under(const BenchLine& line, Basis basis) {
    return basis == Basis::ec5 ? line.ec5 : line.us;
}

}  // namespace

std::vector<BenchLine> linesOf(const BenchResult& worked) {
    std::vector<BenchLine> lines;
    const auto& load = worked.named.joint.load;
    for (const LimitState& state : worked.result.us.states())
        lineFor(lines, state.kind).us = checkOf(state, load);
    for (const LimitState& state : worked.result.ec5.states())
        lineFor(lines, state.kind).ec5 = checkOf(state, load);
    for (const MissingState& missing : worked.result.us.missing)
        lineFor(lines, missing.kind).whyUs = std::string(missing.why);
    for (const MissingState& missing : worked.result.ec5.missing)
        lineFor(lines, missing.kind).whyEc5 = std::string(missing.why);
    return lines;
}

int governing(const std::vector<BenchLine>& lines, Basis basis) {
    int best = -1;
    const Check* least = nullptr;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const auto& check = under(lines[i], basis);
        if (!check || !check->working) continue;
        const bool better = least == nullptr || (check->margin && !least->margin) ||
                            (check->margin && least->margin && *check->margin < *least->margin) ||
                            (!check->margin && !least->margin && *check->working < *least->working);
        if (!better) continue;
        least = &*check;
        best = static_cast<int>(i);
    }
    return best;
}

QString bandWords(const std::optional<Band>& band, UnitSystem units) {
    if (!band) return BenchModel::tr("no figure");
    const QString low = asText(displayForce(band->low, units));
    if (band->low == band->high) return low;
    return BenchModel::tr("%1 to %2").arg(low, asText(displayForce(band->high, units)));
}

void BenchModel::show(std::vector<BenchLine> lines, UnitSystem units, Basis leading) {
    const bool same = lines.size() == lines_.size();
    if (!same) beginResetModel();
    lines_ = std::move(lines);
    units_ = units;
    leading_ = leading;
    if (!same) {
        endResetModel();
    } else if (!lines_.empty()) {
        emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    }
}

int BenchModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(lines_.size());
}

int BenchModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(columnCount_);
}

QVariant BenchModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case state:
            return tr("limit state");
        case us:
            return tr("US carries");
        case ec5:
            return tr("EC5 carries");
        case usMargin:
            return tr("US margin");
        case ec5Margin:
            return tr("EC5 margin");
        case gives:
            return tr("starts to give");
        case apart:
            return tr("comes apart");
        default:
            return tr("goes");
    }
}

QVariant BenchModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const BenchLine& line = lines_[static_cast<std::size_t>(index.row())];
    const bool eurocode = index.column() == ec5 || index.column() == ec5Margin;
    const std::optional<Check>& own = eurocode ? line.ec5 : line.us;
    const std::string& why = eurocode ? line.whyEc5 : line.whyUs;
    const bool any = line.us || line.ec5;
    if (role == Qt::TextAlignmentRole)
        return static_cast<int>(index.column() == us || index.column() == ec5
                                    ? Qt::AlignRight | Qt::AlignVCenter
                                    : Qt::AlignLeft | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole || role == Qt::AccessibleDescriptionRole) {
        QStringList says;
        if (index.column() == state && governing(lines_, leading_) == index.row())
            says.append(tr("This one governs."));
        if (!why.empty()) says.append(asText(why));
        if (own) {
            for (const auto& outside : own->outside) says.append(sentenceOf(outside));
        }
        return says.isEmpty() ? QVariant() : QVariant(says.join(QLatin1Char('\n')));
    }
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole) return {};
    QString text;
    switch (index.column()) {
        case state:
            text = nameOfLine(line);
            if (governing(lines_, leading_) == index.row()) text = tr("▸ %1").arg(text);
            break;
        case us:
        case ec5:
            text = own && own->working ? asText(displayForce(*own->working, units_))
                   : why.empty()       ? QString()
                                       : tr("not known");
            break;
        case usMargin:
        case ec5Margin:
            if (own && own->margin)
                text = tr("%1 %2").arg(asText(marginText(*own->margin)), statusWord(own->status));
            break;
        case gives:
            if (any) text = bandWords(line.any().gives, units_);
            break;
        case apart:
            if (any) text = bandWords(line.any().apart, units_);
            break;
        default:
            if (any) text = line.any().soft ? tr("slowly") : tr("suddenly");
    }
    if (role == Qt::AccessibleTextRole && index.column() != state)
        return tr("%1, %2: %3")
            .arg(nameOfLine(line),
                 headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(), text);
    return text;
}

}  // namespace fayline
