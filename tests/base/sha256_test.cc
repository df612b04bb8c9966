// SHA-256 against the examples of FIPS 180-2, appendix B, which FIPS 180-4 refers to, the empty message of NIST's
// validation vectors (SHA256ShortMsg.rsp), and sha256sum of GNU coreutils.
#include "base/sha256.h"

#include <string>

#include "support/catch.h"

#include "outside_tool.h"

using namespace benchleaf::base;

TEST_CASE("FIPS 180-2, B.1: one block", "[sha256]") {
  CHECK(sha256("abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST_CASE("FIPS 180-2, B.2: two blocks", "[sha256]") {
  CHECK(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") ==
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

TEST_CASE("FIPS 180-2, B.3: a million letters", "[sha256]") {
  CHECK(sha256(std::string(1000000, 'a')) == "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

TEST_CASE("NIST SHA256ShortMsg, length 0", "[sha256]") {
  CHECK(sha256("") == "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

TEST_CASE("all lengths around a block agree with sha256sum", "[sha256]") {
  const std::vector<std::string> lines =
      lines_of("for n in $(seq 0 130); do head -c $n /dev/zero | tr '\\0' x | sha256sum; done");
  REQUIRE(lines.size() == 131);
  for (std::size_t length = 0; length < lines.size(); ++length) {
    INFO("length " << length);
    CHECK(sha256(std::string(length, 'x')) == lines.at(length).substr(0, 64));
  }
}

TEST_CASE("pieces give the digest of the whole", "[sha256]") {
  const std::string text(300, 'q');
  for (std::size_t piece : {1U, 7U, 63U, 64U, 65U}) {
    Sha256 hash;
    for (std::size_t at = 0; at < text.size(); at += piece) hash.add(std::string_view(text).substr(at, piece));
    CHECK(hash.finish() == sha256(text));
  }
}
