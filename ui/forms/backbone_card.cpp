#include "backbone_card.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "choice_box.h"
#include "words/values.h"

namespace fayline {
namespace {

/// Joints that most backbones have, to choose from or to name otherwise.
QStringList usualJoints() {
    return {BackboneCard::tr("stem to keel"),    BackboneCard::tr("stem knee"),
            BackboneCard::tr("keel scarph"),     BackboneCard::tr("deadwood to keel"),
            BackboneCard::tr("sternpost knee"),  BackboneCard::tr("horn timber"),
            BackboneCard::tr("keelson to keel"), BackboneCard::tr("breasthook")};
}

QString titleOfJoint(const std::string& joint) {
    QString title = asText(joint);
    title.replace(QLatin1Char('_'), QLatin1Char(' '));
    if (!title.isEmpty()) title[0] = title[0].toUpper();
    return title;
}

/// As decisions name it: small letters, `_` between words.
std::string jointName(const QString& typed) {
    QString name = typed.simplified().toLower();
    name.replace(QLatin1Char(' '), QLatin1Char('_'));
    return name.remove(QLatin1Char('.')).toStdString();
}

}  // namespace

BackboneCard::BackboneCard(Desk& desk, QWidget* parent)
    : QWidget(parent),
      desk_(desk),
      name_(new ChoiceBox),
      add_(new QPushButton(tr("&Add joint"))),
      forms_(new QVBoxLayout) {
    auto* card = new Card(tr("Joints of the backbone"));
    auto* words = new QLabel(tr(
        "A joint is a row of bolts or drifts in the middle line, such as a scarph or a knee: name "
        "it, then decide what holds it and where its line runs."));
    words->setWordWrap(true);
    auto* label = new QLabel(tr("&Name:"));
    label->setBuddy(name_);
    name_->addItem(QString());
    name_->addItems(usualJoints());
    name_->setAccessibleName(tr("Name of a joint"));
    auto* line = new QHBoxLayout;
    line->addWidget(label);
    line->addWidget(name_, 1);
    line->addWidget(add_);
    card->contents()->addWidget(words);
    card->contents()->addLayout(line);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(12);
    layout->addWidget(card);
    layout->addLayout(forms_);
    forms_->setSpacing(12);
    const auto add = [this] {
        if (addJoint(name_->lineEdit()->text())) name_->lineEdit()->clear();
    };
    connect(add_, &QPushButton::clicked, this, add);
    connect(name_->lineEdit(), &QLineEdit::returnPressed, this, add);
    connect(&desk_, &Desk::resultsChanged, this, &BackboneCard::refresh);
    refresh();
}

void BackboneCard::refresh() {
    const bool editable = desk_.isOpen() && !desk_.isReadOnly();
    add_->setEnabled(editable);
    name_->setEnabled(editable);
    const auto& present = desk_.project().backbone;
    for (auto joint = joints_.begin(); joint != joints_.end();) {
        if (present.count(joint->first) > 0) {
            ++joint;
            continue;
        }
        joint->second->hide();
        joint->second->deleteLater();
        joint = joints_.erase(joint);
    }
    for (const auto& [name, decided] : present) {
        if (joints_.count(name) > 0) continue;
        auto* form = new FieldForm(desk_, titleOfJoint(name), "backbone", name);
        auto* remove = new QPushButton(tr("Take this joint away"));
        remove->setAccessibleName(tr("Take %1 away").arg(titleOfJoint(name)));
        form->contents()->addWidget(remove, 0, Qt::AlignLeft);
        connect(remove, &QPushButton::clicked, this,
                [this, joint = std::string(name)] { removeJoint(joint); });
        joints_[name] = form;
        forms_->addWidget(form);
        for (FieldRow* row : form->rows()) row->follow();
    }
}

FieldRow* BackboneCard::row(const std::string& what) const {
    for (const auto& [name, form] : joints_) {
        if (FieldRow* found = form->row(what)) return found;
    }
    return nullptr;
}

void BackboneCard::commit() {
    const auto joints = joints_;  // deciding may make or drop forms
    for (const auto& [name, form] : joints) form->commit();
}

bool BackboneCard::addJoint(const QString& typed) {
    const std::string name = jointName(typed);
    if (name.empty()) {
        emit stopped(tr("A joint needs a name, such as stem scarph."), {});
        return false;
    }
    if (joints_.count(name) > 0) {
        emit stopped(tr("There is a joint of that name: %1.").arg(titleOfJoint(name)), {});
        return false;
    }
    if (const auto done = desk_.decide({{"B." + name + ".kind", "bolt"}}); !done) {
        emit stopped(namedSentence(done.error()), {});
        return false;
    }
    if (FieldRow* kind = row("B." + name + ".kind")) kind->entry()->setFocus(Qt::OtherFocusReason);
    return true;
}

bool BackboneCard::removeJoint(const std::string& joint) {
    Typed typed;
    const std::string front = "B." + joint + ".";
    for (const auto& [what, text] : desk_.journal().decided()) {
        if (what.rfind(front, 0) == 0) typed.emplace_back(what, "");
    }
    if (typed.empty()) return false;
    if (const auto done = desk_.decide(typed); !done) {
        emit stopped(namedSentence(done.error()), {});
        return false;
    }
    name_->setFocus(Qt::OtherFocusReason);
    return true;
}

void BackboneCard::focusName() {
    name_->setFocus(Qt::OtherFocusReason);
}

}  // namespace fayline
