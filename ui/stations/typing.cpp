#include "typing.h"

#include "words/fastenings.h"
#include "words/materials.h"
#include "words/values.h"

namespace fayline {
namespace {

/// One side's decisions, or both sides' together, for one text.
class Side {
  public:
    Side(const Desk& desk, const StationRow& row, Column column, std::string kind, std::string side)
        : desk_(desk),
          row_(row),
          column_(column),
          kind_(std::move(kind)),
          side_(std::move(side)),
          units_(speechOf(desk.project()).units) {}

    /// False when a summary cannot be read.
    bool put(const QString& text, Typed& typed) const {
        if (text.isEmpty()) {
            clear(typed);
            return true;
        }
        if (partOf(column_) == ColumnPart::summary) {
            const auto read = readSummary(text, kind_);
            for (const auto& [name, value] : read) add(name, asText(value), typed);
            return !read.empty();
        }
        if (partOf(column_) != ColumnPart::size) {
            const std::string what = decisionsOf(column_, row_.frame, {}, kind_, side_).front();
            add(what.substr(what.rfind('.') + 1), text, typed);
            return true;
        }
        const bool gauge =
            kind_ == "wood_screw" ||
            (kind_.empty() && (text.startsWith(QLatin1Char('#')) ||
                               text.startsWith(QLatin1String("no"), Qt::CaseInsensitive)));
        QString plain = text;
        if (plain.endsWith(QLatin1String("square"), Qt::CaseInsensitive)) plain.chop(6);
        add(gauge ? "gauge" : "diameter", plain.trimmed(), typed);
        return true;
    }

    void clear(Typed& typed) const {
        auto whats = decisionsOf(column_, row_.frame, {}, kind_, side_);
        if (partOf(column_) == ColumnPart::size) whats = {front() + "gauge", front() + "diameter"};
        for (const std::string& what : whats) typed.emplace_back(what, "");
    }

    /// Takes this side's own decisions back, if there are any.
    void yield(Typed& typed) const {
        Typed all;
        clear(all);
        for (auto& [what, text] : all) {
            if (desk_.journal().decided().count(what) > 0) typed.emplace_back(what, text);
        }
    }

  private:
    [[nodiscard]] std::string front() const {
        return row_.frame + (side_.empty() ? "" : "." + side_) + "." + fasteningOf(column_) + ".";
    }
    void add(const std::string& name, const QString& text, Typed& typed) const {
        const std::string what = front() + name;
        const auto target = findDecision(what);
        std::string plain = text.toStdString();
        if (target) {
            const Field& field = *target->field;
            plain = idForName(choicesFor(field, desk_.catalogue(), desk_.project()), plain);
            plain = withUnit(field, plain, units_);
        }
        typed.emplace_back(what, plain);
    }

    const Desk& desk_;
    const StationRow& row_;
    Column column_;
    std::string kind_, side_;
    UnitSystem units_;
};

}  // namespace

std::string kindAt(const Desk& desk, const StationRow& row, Column column) {
    const std::string group = fasteningOf(column);
    if (group.empty()) return {};
    return standingAt(desk.project(), group, row.frame, {}).kind.value_or("");
}

std::optional<Typed> typedInCell(const Desk& desk, const StationRow& row, Column column,
                                 const QString& text, const std::string& kind) {
    Typed typed;
    if (!row.cell(column).editable) return typed;
    const QString plain = text.trimmed();
    if (fasteningOf(column).empty()) {
        const Field* field = fieldOf(column);
        std::string value =
            idForName(choicesFor(*field, desk.catalogue(), desk.project()), plain.toStdString());
        value = withUnit(*field, value, speechOf(desk.project()).units);
        for (const std::string& what : decisionsOf(column, row.frame, row.bolts))
            typed.emplace_back(what, value);
        return typed;
    }
    const qsizetype bar = plain.indexOf(QLatin1Char('|'));
    if (hasSides(column) && bar >= 0) {
        const bool read =
            Side(desk, row, column, kind, "P").put(plain.left(bar).trimmed(), typed) &&
            Side(desk, row, column, kind, "S").put(plain.mid(bar + 1).trimmed(), typed);
        return read ? std::optional(typed) : std::nullopt;
    }
    if (!Side(desk, row, column, kind, "").put(plain, typed)) return std::nullopt;
    if (hasSides(column)) {
        for (const char* side : {"P", "S"}) Side(desk, row, column, kind, side).yield(typed);
    }
    return typed;
}

}  // namespace fayline
