#include "bench_work.h"

#include <QUndoCommand>
#include <algorithm>

#include "bench_fields.h"
#include "joint/work_joint.h"

namespace fayline {

/// What stood and what stands after it; one after another in the same field become one.
class BenchStep : public QUndoCommand {
  public:
    BenchStep(BenchWork& work, BenchDraft after, const QString& title, std::string mergeKey)
        : QUndoCommand(title),
          work_(work),
          before_(work.draft()),
          after_(std::move(after)),
          mergeKey_(std::move(mergeKey)) {}

    void undo() override {
        work_.stand(before_);
        if (discarded_) setObsolete(true);
    }
    void redo() override { work_.stand(after_); }
    [[nodiscard]] int id() const override { return mergeKey_.empty() ? -1 : 1; }
    bool mergeWith(const QUndoCommand* other) override {
        const auto* later = static_cast<const BenchStep*>(other);
        if (later->mergeKey_ != mergeKey_) return false;
        after_ = later->after_;
        // Typed back to what it was: no step at all.
        setObsolete(after_ == before_);
        return true;
    }

    [[nodiscard]] const std::string& mergeKey() const { return mergeKey_; }
    /// Goes for good when it is taken back.
    void discard() { discarded_ = true; }

  private:
    BenchWork& work_;
    bool discarded_ = false;
    BenchDraft before_, after_;
    std::string mergeKey_;
};

namespace {

/// Another kind of fastening: what means nothing for it goes, what it cannot do without comes with
/// a size to begin with.
void changeKind(BenchDraft& draft, FastenerKind kind, UnitSystem units) {
    for (const BenchField& field : fastenerFields()) {
        const bool fits = field.only.empty() ||
                          std::find(field.only.begin(), field.only.end(), kind) != field.only.end();
        if (!fits) draft.set(field.key, {});
    }
    draft.set("fastener.ends.head", {});
    draft.set("fastener.ends.point", {});
    const bool inches = units == UnitSystem::inches;
    const bool screw = kind == FastenerKind::woodScrew;
    if (screw) {
        draft.set("fastener.diameter", {});
        if (draft.at("fastener.gauge").empty()) draft.set("fastener.gauge", "No. 14");
    } else if (draft.at("fastener.diameter").empty()) {
        draft.set("fastener.diameter", inches ? "3/8 in" : "10 mm");
    }
    if ((screw || kind == FastenerKind::drift) && draft.at("fastener.length").empty())
        draft.set("fastener.length", inches ? "2 1/2 in" : "65 mm");
}

}  // namespace

BenchWork::BenchWork(JointReader reader, QObject* parent)
    : QObject(parent), reader_(std::move(reader)), draft_(firstDraft()) {
    workOut();
}

std::string BenchWork::fileText() const {
    return jointFileText(draft_, units_, basis_);
}

void BenchWork::speak(UnitSystem units, Basis basis) {
    if (units == units_ && basis == basis_) return;
    units_ = units;
    basis_ = basis;
    workOut();
    emit changed();
}

void BenchWork::stand(const BenchDraft& draft) {
    draft_ = draft;
    workOut();
    emit changed();
}

void BenchWork::workOut() {
    if (!reader_) return;
    auto named = reader_(fileText(), "the joint");
    if (!named) {
        problems_ = named.error();
        return;
    }
    BenchResult worked;
    auto result = workJoint(named->joint, &worked.traces);
    if (!result) {
        problems_ = {result.error()};
        return;
    }
    problems_.clear();
    if (auto moisture = moistureRows(named->joint, named->zone))
        worked.moisture = std::move(*moisture);
    worked.named = std::move(*named);
    worked.result = std::move(*result);
    last_ = std::move(worked);
}

std::optional<Problem> BenchWork::set(const std::string& path, const std::string& text,
                                      const QString& title) {
    BenchDraft after = draft_;
    after.set(path, text);
    if (after == draft_) return std::nullopt;
    if (path == "fastener.kind") {
        if (const auto kind = fastenerKindNamed(text)) changeKind(after, *kind, units_);
    }
    const auto read = reader_(jointFileText(after, units_, basis_), "the joint");
    if (!read) {
        for (const Problem& problem : read.error()) {
            if (problem.where == path) return problem;
        }
    }
    history_.push(
        new BenchStep(*this, std::move(after), title, path + "/" + std::to_string(typing_)));
    return std::nullopt;
}

void BenchWork::takeBack(const std::string& path) {
    const int last = history_.index() - 1;
    if (last < 0) return;
    // The stack shows its steps only to look at; all of them are of this kind.
    auto* step = const_cast<BenchStep*>(static_cast<const BenchStep*>(history_.command(last)));
    if (step->mergeKey() != path + "/" + std::to_string(typing_)) return;
    step->discard();
    history_.undo();
}

void BenchWork::replace(const BenchDraft& draft, const QString& title) {
    if (draft == draft_) return;
    pause();
    history_.push(new BenchStep(*this, draft, title, {}));
}

}  // namespace fayline
