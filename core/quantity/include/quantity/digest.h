#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

namespace fayline {

/// SHA-256 (FIPS 180-4) of the bytes, as 64 small hexadecimal digits.
std::string sha256Hex(std::string_view bytes);

/// SHA-256 over a row of fields. Each goes in behind its length (eight bytes, most significant
/// first), so that "ab","c" and "a","bc" differ.
class Digest {
  public:
    Digest();
    ~Digest();
    Digest(const Digest& other);
    Digest(Digest&& other) noexcept;
    Digest& operator=(const Digest& other);
    Digest& operator=(Digest&& other) noexcept;

    Digest& field(std::string_view bytes);
    Digest& field(std::int64_t number);  ///< as its decimal text

    /// The digest of the fields so far; more may follow.
    [[nodiscard]] std::string hex() const;

  private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace fayline
