#pragma once

#include <QAbstractTableModel>
#include <map>
#include <string>
#include <vector>

#include "derive/old_paper.h"
#include "derive/paper.h"

namespace fayline {

/// The sheets there are, and their revision codes as they become known.
class SheetsModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { title, revision, pages, paper, columnCount_ };
    /// Whether a sheet on paper is out of date.
    enum Role { oldRole = Qt::UserRole };

    using QAbstractTableModel::QAbstractTableModel;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    void show(std::vector<SheetName> names);
    /// What one sheet turned out to be.
    void tell(int row, const Sheet& sheet);
    [[nodiscard]] const SheetName& name(int row) const {
        return names_[static_cast<std::size_t>(row)];
    }
    /// What the journal says of sheets put on paper.
    void setRecorded(const std::map<std::string, std::string>& recorded);
    /// Sheets on paper that are out of date, as far as the codes of now are known.
    [[nodiscard]] std::vector<OldPaper> old() const;
    [[nodiscard]] int rowOf(const std::string& id) const;
    /// The first sheet whose revision is not known yet; -1 when all are.
    [[nodiscard]] int firstUnknown() const;

  private:
    [[nodiscard]] QString paperWords(const std::string& id) const;
    [[nodiscard]] bool isOld(const std::string& id) const;

    struct Known {
        QString revision;
        int pages = 0;
    };
    std::vector<SheetName> names_;
    std::map<std::string, Known> known_;
    std::map<std::string, std::string> recorded_;
};

}  // namespace fayline
