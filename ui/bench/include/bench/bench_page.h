#pragma once

#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "derive/record.h"
#include "desk/desk.h"
#include "desk/page.h"
#include "quantity/result.h"
#include "sheet/paper.h"

class QLabel;
class QPrinter;
class QSplitter;
class QTableView;
class QTextBrowser;
class QUndoStack;
class QVBoxLayout;

namespace fayline {

class BenchModel;
class BenchRow;
class BenchWork;
class Card;
class Segments;
class SketchView;
struct BenchDraft;

/// Reads the text of a joint file; `name` is the file's for what is wrong with it.
using JointReader =
    std::function<ResultAll<NamedJoint>(const std::string& text, const std::string& name)>;

/// What the panel is given by the program around it.
struct BenchSetup {
    std::shared_ptr<const Catalogue> catalogue;
    JointReader reader;
    std::string program;  ///< "fayline 0.1.0"
};

/// One joint worked out by itself: nothing on it touches the hull. Fields on the left; on the right
/// the joint cut open, every limit state under both bases, and the working of the chosen one.
class BenchPage : public Page {
    Q_OBJECT

  public:
    BenchPage(Desk& desk, BenchSetup setup, QWidget* parent = nullptr);
    ~BenchPage() override;

    void settle() override;
    [[nodiscard]] bool does(PageCommand command) const override;
    void run(PageCommand command) override;
    [[nodiscard]] QByteArray arrangement() const override;
    void arrange(const QByteArray& state) override;

    /// The panel's own history; undo and redo of the window act on it while it is in front.
    [[nodiscard]] QUndoStack& history();
    /// The joint as a joint file.
    [[nodiscard]] std::string fileText() const;
    bool load(const QString& path);
    bool save(const QString& path);
    /// The joint of one fastening of the hull, with the load of its worst case; false when there
    /// is none of that id, or it is not worked as a joint.
    bool takeFromHull(const std::string& id);
    /// Ids that can be taken, in the hull's order.
    [[nodiscard]] std::vector<std::string> takable() const;
    /// What "copy" puts on the clipboard; empty before there is a result.
    [[nodiscard]] QString plainResult() const;
    [[nodiscard]] std::optional<Record> calculation() const;
    bool saveRecord(const QString& path, PaperSize paper);
    bool print(QPrinter& printer, PaperSize paper);

    void addMember();
    void removeMember(int member);
    void moveMember(int member, int by);
    /// Which text stands below the table: working, what lets go first, sizes.
    void showPart(int part);

    [[nodiscard]] BenchWork& work() { return *work_; }
    [[nodiscard]] BenchRow* row(const std::string& path) const;
    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] QTextBrowser& text() { return *text_; }
    [[nodiscard]] QLabel& verdict() { return *verdict_; }
    [[nodiscard]] SketchView& picture() { return *picture_; }

  public slots:
    void askAndLoad();
    void askAndSave();
    void askAndTake();
    void askAndSaveRecord();
    void askAndPrint();
    void startAfresh();

  signals:
    void done(const QString& says);
    void cautionsWanted();
    /// Undo or redo has something else to act on.
    void historyChanged();

  protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    QWidget* makeFields();
    QWidget* makeResults();
    QWidget* makeDeeds();
    BenchRow* addRow(const struct BenchField& field, const std::string& path, QVBoxLayout* to);
    void makeMemberCards();
    void speak();
    void refresh();
    void followRows();
    void showVerdict();
    void showText();
    void takeTyped(BenchRow* row, const std::string& text, bool ended);
    [[nodiscard]] QString rule(const std::string& path) const;
    [[nodiscard]] PaperSize usualPaper() const;

    Desk& desk_;
    BenchSetup setup_;
    BenchWork* work_;
    BenchModel* model_;
    std::vector<BenchRow*> rows_, memberRows_;
    std::vector<QWidget*> moreParts_;
    QWidget* fields_ = nullptr;
    QVBoxLayout* membersAt_ = nullptr;
    QWidget* members_ = nullptr;
    Card* membersCard_ = nullptr;
    std::size_t memberCount_ = 0;
    bool moreShown_ = false;
    SketchView* picture_;
    QLabel* verdict_;
    QLabel* pending_;
    QTableView* table_;
    Segments* parts_;
    QTextBrowser* text_;
    QSplitter* across_;
    QSplitter* upright_;
};

}  // namespace fayline
