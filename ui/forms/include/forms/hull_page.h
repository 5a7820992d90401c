#pragma once

#include <array>
#include <vector>

#include "desk/desk.h"
#include "desk/page.h"
#include "forms/field_form.h"

class QScrollArea;

namespace fayline {

class BackboneCard;
class OffsetsCard;
class Segments;

/// What is decided for the whole hull, in three parts: the hull and its timbers, planking and
/// fastenings, the backbone's joints. Above them what is still missing.
class HullPage : public Page {
    Q_OBJECT

  public:
    enum Part { timbers, fastenings, joints };
    static constexpr std::size_t partCount = 3;

    explicit HullPage(Desk& desk, QWidget* parent = nullptr);

    /// Brings a decision's field into view and puts the cursor there.
    void showField(const QString& what);
    void showPart(Part part);
    [[nodiscard]] Part part() const;
    void settle() override;
    [[nodiscard]] bool does(PageCommand command) const override;
    void run(PageCommand command) override;
    bool importOffsets(const QString& file);
    [[nodiscard]] FieldRow* row(const std::string& what) const;
    [[nodiscard]] BackboneCard& backbone() { return *backbone_; }

  signals:
    void stationsWanted(const QString& frame);

  private:
    QWidget* makeTimbers(Desk& desk);
    QWidget* makeFastenings(Desk& desk);
    QWidget* makeJoints();
    FieldForm* form(Desk& desk, const QString& title, const char* section);
    [[nodiscard]] FieldRow* firstRow(const std::string& front, Part& part) const;

    QScrollArea* scroll_;
    Segments* switch_;
    OffsetsCard* offsets_;
    BackboneCard* backbone_;
    std::array<QWidget*, partCount> parts_{};
    std::array<std::vector<FieldForm*>, partCount> forms_;
    Part making_ = timbers;
};

}  // namespace fayline
