#pragma once

#include <memory>
#include <optional>

#include "desk/desk.h"
#include "desk/page.h"
#include "sheet/paper.h"

class QLabel;
class QPrinter;
class QProgressBar;
class QPushButton;
class QSplitter;
class QStackedWidget;
class QTableView;
class QTimer;

namespace fayline {

class PaperView;
class SaveAll;
class Segments;
class SheetMaker;
class SheetsModel;
class WhenSeen;
struct PaperOptions;

/// The sheets for the bench: list with revision codes, preview, printing and PDF.
class SheetsPage : public Page {
    Q_OBJECT

  public:
    explicit SheetsPage(Desk& desk, QString program, QWidget* parent = nullptr);
    ~SheetsPage() override;

    void settle() override {}
    [[nodiscard]] bool does(PageCommand command) const override;
    void run(PageCommand command) override;
    [[nodiscard]] QByteArray arrangement() const override;
    void arrange(const QByteArray& state) override;

    /// Chooses a sheet by its id; false when there is none.
    bool choose(const std::string& id);
    void setPaper(PaperSize paper);
    bool savePdf(const QString& path);
    void saveAll(const QString& folder);
    /// Paints every page of the chosen sheet, full size.
    bool print(QPrinter& printer);
    [[nodiscard]] bool isSaving() const { return saving_ != nullptr; }
    void stopSaving();

    [[nodiscard]] SheetsModel& model() { return *model_; }
    [[nodiscard]] QTableView& list() { return *list_; }
    [[nodiscard]] PaperView& preview() { return *preview_; }

  public slots:
    void askAndPrint();
    void askAndSave();
    void askAndSaveAll();

  signals:
    void hullWanted(const QString& what);
    void cautionsWanted();
    void done(const QString& says);

  protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    QWidget* makeList();
    QWidget* makePreview();
    void refresh();
    void showChosen();
    void learnNext();
    void sayPage();
    void sayOld();
    void keepRecord(const Typed& records, const QString& title);
    void fitColumns();
    void endSaving();
    [[nodiscard]] PaperOptions options() const;
    const SheetMaker& maker();
    /// The chosen sheet with the time of now on it.
    [[nodiscard]] std::optional<Sheet> fresh() const;

    Desk& desk_;
    QString program_;
    SheetsModel* model_;
    QTableView* list_;
    PaperView* preview_;
    Segments* papers_;
    QLabel* old_;  ///< which paper is out of date
    QLabel* page_;
    QPushButton* before_;
    QPushButton* after_;
    QPushButton* print_;
    QPushButton* save_;
    QPushButton* saveAll_;
    QPushButton* stop_;
    QProgressBar* progress_;
    QStackedWidget* sheetsOrWords_;
    QSplitter* across_;
    QTimer* idle_;
    SaveAll* saving_ = nullptr;
    PaperSize paper_ = PaperSize::a4;
    bool paperChosen_ = false;
    WhenSeen* follow_ = nullptr;
    std::unique_ptr<const SheetMaker> maker_;  ///< none after an edit, until it is needed
};

}  // namespace fayline
