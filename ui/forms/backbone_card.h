#pragma once

#include <map>
#include <string>

#include "desk/desk.h"
#include "forms/field_form.h"

class QComboBox;
class QPushButton;
class QVBoxLayout;

namespace fayline {

/// The joints of the backbone, a form each; joints are added and taken away here.
class BackboneCard : public QWidget {
    Q_OBJECT

  public:
    explicit BackboneCard(Desk& desk, QWidget* parent = nullptr);

    [[nodiscard]] FieldRow* row(const std::string& what) const;
    void commit();
    /// Adds a joint of bolts under a name as typed; it is there from then on.
    bool addJoint(const QString& name);
    /// Takes everything decided for a joint back, in one step.
    bool removeJoint(const std::string& joint);
    void focusName();

  signals:
    void stopped(const QString& says, const QStringList& details);

  private:
    void refresh();

    Desk& desk_;
    QComboBox* name_;
    QPushButton* add_;
    QVBoxLayout* forms_;
    std::map<std::string, FieldForm*> joints_;
};

}  // namespace fayline
