#include "quantity/digest.h"

#include <nettle/sha2.h>

#include <array>

namespace fayline {
namespace {

void take(sha256_ctx& context, std::string_view bytes) {
    // nettle wants unsigned bytes.
    sha256_update(&context, bytes.size(), reinterpret_cast<const std::uint8_t*>(bytes.data()));
}

std::string finishedHex(sha256_ctx context) {
    std::array<std::uint8_t, SHA256_DIGEST_SIZE> digest{};
    sha256_digest(&context, digest.size(), digest.data());
    constexpr std::string_view digits = "0123456789abcdef";
    std::string hex;
    for (const std::uint8_t byte : digest) {
        hex += digits[byte >> 4];
        hex += digits[byte & 15];
    }
    return hex;
}

}  // namespace

struct Digest::State {
    sha256_ctx context{};
};

std::string sha256Hex(std::string_view bytes) {
    sha256_ctx context{};
    sha256_init(&context);
    take(context, bytes);
    return finishedHex(context);
}

Digest::Digest() : state_(std::make_unique<State>()) {
    sha256_init(&state_->context);
}
Digest::~Digest() = default;
Digest::Digest(const Digest& other) : state_(std::make_unique<State>(*other.state_)) {}
Digest::Digest(Digest&& other) noexcept = default;
Digest& Digest::operator=(const Digest& other) {
    state_ = std::make_unique<State>(*other.state_);
    return *this;
}
Digest& Digest::operator=(Digest&& other) noexcept = default;

Digest& Digest::field(std::string_view bytes) {
    std::string length;
    for (int shift = 56; shift >= 0; shift -= 8) {
        length += static_cast<char>((bytes.size() >> shift) & 0xFF);
    }
    take(state_->context, length);
    take(state_->context, bytes);
    return *this;
}

Digest& Digest::field(std::int64_t number) {
    return field(std::string_view(std::to_string(number)));
}

std::string Digest::hex() const {
    return finishedHex(state_->context);
}

}  // namespace fayline
