#pragma once

#include <memory>

#include "catalogue/catalogue.h"
#include "derive/results.h"
#include "project/project.h"

namespace fayline {

/// The one road: project → hull → layout → loads → checks. Keeps what it worked out before, by
/// value, so that an edit re-runs only what it touches; the result is the same as a fresh
/// deriver's, bit for bit.
class Deriver {
  public:
    explicit Deriver(std::shared_ptr<const Catalogue> catalogue);
    ~Deriver();
    Deriver(Deriver&&) noexcept;
    Deriver& operator=(Deriver&&) noexcept;

    std::shared_ptr<const Results> derive(const Project& project);

  private:
    struct Memory;
    std::unique_ptr<Memory> memory_;
    std::shared_ptr<const Catalogue> catalogue_;
};

}  // namespace fayline
