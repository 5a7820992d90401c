#pragma once

#include <QAbstractButton>
#include <QFrame>
#include <vector>

namespace fayline {

/// The pages of the window, down its left edge.
class Rail : public QFrame {
    Q_OBJECT

  public:
    enum class Sign { hull, stations, margins, sheets, metal, bench };

    explicit Rail(QWidget* parent = nullptr);

    /// A page that needs a hull can be chosen only while one is open.
    void addPage(const QString& name, Sign sign, bool needsHull = true);
    void choose(int page);
    void setPagesEnabled(bool enabled);

  signals:
    void chosen(int page);

  protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

  private:
    std::vector<QAbstractButton*> pages_;
    std::vector<bool> needHull_;
};

}  // namespace fayline
