#include "quantity/digest.h"

#include <gtest/gtest.h>

namespace fayline {
namespace {

// NIST, Cryptographic Standards and Guidelines, Example Values, SHA-256 (for FIPS 180-4): the
// one-block and the two-block message; FIPS 180-2, appendix B.3: a million times "a". Standing:
// read, in copies of the published values.
TEST(Sha256, PublishedExamples) {
    EXPECT_EQ(sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    EXPECT_EQ(sha256Hex("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
    EXPECT_EQ(sha256Hex(std::string(1'000'000, 'a')),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
    EXPECT_EQ(sha256Hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST(Digest, IsTheHashOfLengthPrefixedFields) {
    const std::string bytes("\0\0\0\0\0\0\0\2ab\0\0\0\0\0\0\0\1c\0\0\0\0\0\0\0\3-42", 30);
    EXPECT_EQ(Digest().field("ab").field("c").field(-42).hex(), sha256Hex(bytes));
}

TEST(Digest, TellsWhereOneFieldEnds) {
    EXPECT_NE(Digest().field("ab").field("c").hex(), Digest().field("a").field("bc").hex());
    EXPECT_NE(Digest().field("").hex(), Digest().hex());
}

TEST(Digest, MayGoOnAfterHexAndCopies) {
    Digest first;
    first.field("a");
    const Digest copy = first;
    EXPECT_EQ(first.hex(), copy.hex());
    first.field("b");
    EXPECT_EQ(first.hex(), Digest().field("a").field("b").hex());
    EXPECT_EQ(copy.hex(), Digest().field("a").hex());
    Digest other;
    other = copy;
    EXPECT_EQ(other.hex(), copy.hex());
}

}  // namespace
}  // namespace fayline
