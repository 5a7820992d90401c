#pragma once

#include <QStringList>
#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace fayline {

/// Shown while no project is open.
class StartPage : public QWidget {
    Q_OBJECT

  public:
    explicit StartPage(QWidget* parent = nullptr);

    void setRecent(const QStringList& paths);

  signals:
    void newWanted();
    void offsetsWanted();
    void openWanted();
    void demoWanted();
    void recentWanted(const QString& path);

  private:
    QLabel* recentTitle_;
    QVBoxLayout* recent_;
};

}  // namespace fayline
