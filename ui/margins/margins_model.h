#pragma once

#include <QAbstractItemModel>
#include <memory>
#include <string>
#include <vector>

#include "joints.h"
#include "words/values.h"

namespace fayline {

/// The margins, a line per joint with the check that governs it, worst first; below a joint the
/// things it is made of, below each thing its checks. Lines below are made when they are asked for.
/// After an edit only lines that are others than before are told of.
class MarginsModel : public QAbstractItemModel {
    Q_OBJECT

  public:
    enum Column { thing, status, margin, state, loadCase, basis, demand, working, columnCount_ };
    enum Role { statusRole = Qt::UserRole };

    explicit MarginsModel(QObject* parent = nullptr);
    ~MarginsModel() override;

    QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    QModelIndex parent(const QModelIndex& index) const override;
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    bool hasChildren(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    void show(std::shared_ptr<const Results> results, const Speech& speech);
    void setFilter(const MarginFilter& filter);
    [[nodiscard]] const MarginFilter& filter() const { return filter_; }
    [[nodiscard]] const std::shared_ptr<const Results>& results() const { return results_; }

    /// The check that governs a line.
    [[nodiscard]] const Check& check(const QModelIndex& index) const;
    /// All checks of a line, worst first.
    [[nodiscard]] const CheckList& checks(const QModelIndex& index) const;
    /// The first line with a fastening, or at a frame; not valid when there is none.
    [[nodiscard]] QModelIndex firstOf(const std::string& idOrFrame) const;
    /// Checks listed, and all there are, whatever the filter.
    [[nodiscard]] int listed() const { return listed_; }
    [[nodiscard]] int total() const;
    /// Sets of checks that the last change made it look through.
    [[nodiscard]] int looked() const { return lister_.looked(); }

  private:
    struct Line;

    [[nodiscard]] Line* lineOf(const QModelIndex& index) const;
    [[nodiscard]] QModelIndex indexOf(const Line& line) const;
    static void fill(Line& line);
    void list();
    void follow(Line& line, std::vector<MarginEntry> entries);
    void followOne(Line& line, MarginEntry entry);
    void drop(Line& line, const std::vector<MarginEntry>& entries);
    [[nodiscard]] QString text(const Line& line, int column) const;

    std::shared_ptr<const Results> results_;
    Speech speech_;
    MarginFilter filter_;
    JointLister lister_;
    std::unique_ptr<Line> root_;
    int listed_ = 0;
};

}  // namespace fayline
