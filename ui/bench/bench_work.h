#pragma once

#include <QObject>
#include <QUndoStack>
#include <optional>

#include "bench/bench_page.h"
#include "bench_draft.h"
#include "joint/joint_result.h"

namespace fayline {

/// A joint that is good to be worked, with all that comes out of it.
struct BenchResult {
    NamedJoint named;
    JointResult result;
    JointTraces traces;
    std::vector<MoistureRow> moisture;
};

/// The joint on the bench: what stands in the fields, its history, and the last result that could
/// be worked out. A value that is refused changes nothing; where the fields do not make a joint
/// yet, the last result stays.
class BenchWork : public QObject {
    Q_OBJECT

  public:
    BenchWork(JointReader reader, QObject* parent = nullptr);

    [[nodiscard]] const BenchDraft& draft() const { return draft_; }
    [[nodiscard]] QUndoStack& history() { return history_; }
    /// Empty only before the first joint that could be worked.
    [[nodiscard]] const std::optional<BenchResult>& last() const { return last_; }
    /// What keeps the fields from making a joint, by path; empty when last() is of what stands.
    [[nodiscard]] const Problems& problems() const { return problems_; }
    [[nodiscard]] std::string fileText() const;

    /// How figures are spoken of; no step of the history.
    void speak(UnitSystem units, Basis basis);
    [[nodiscard]] UnitSystem units() const { return units_; }
    [[nodiscard]] Basis basis() const { return basis_; }

    /// One field. Refused: what is wrong with it; nothing is changed then. `title` names the step.
    /// Letters typed one after another into one field are one step until pause().
    std::optional<Problem> set(const std::string& path, const std::string& text,
                               const QString& title);
    void pause() { ++typing_; }
    /// As if nothing had been typed into this field since the last pause().
    void takeBack(const std::string& path);
    /// Everything at once, as one step.
    void replace(const BenchDraft& draft, const QString& title);

  signals:
    void changed();

  private:
    friend class BenchStep;
    void stand(const BenchDraft& draft);
    void workOut();

    JointReader reader_;
    QUndoStack history_;
    BenchDraft draft_;
    Problems problems_;
    std::optional<BenchResult> last_;
    UnitSystem units_ = UnitSystem::inches;
    Basis basis_ = Basis::us;
    int typing_ = 0;
};

}  // namespace fayline
