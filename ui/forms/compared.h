#pragma once

#include <QString>
#include <vector>

#include "desk/desk.h"
#include "theme/card.h"

class QGridLayout;
class QLabel;

namespace fayline {

/// One figure as worked out beside what the builder states.
struct Compared {
    QString name, worked, stated, apart;
    bool operator==(const Compared&) const = default;
};
std::vector<Compared> comparedFigures(const Desk& desk);

/// Displacement, wetted length, centre and ballast ratio: worked out against stated.
class ComparedCard : public Card {
    Q_OBJECT

  public:
    explicit ComparedCard(Desk& desk, QWidget* parent = nullptr);

  private:
    void refresh();

    Desk& desk_;
    QGridLayout* grid_;
    QLabel* why_;
    std::vector<std::array<QLabel*, 4>> cells_;
};

}  // namespace fayline
