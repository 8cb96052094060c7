#pragma once
// The programs talk to nobody. Every test program forbids itself the making of internet sockets, so that whatever reaches for a network,
// in our code or in a library, ends the run and says why.

#include <linux/filter.h>
#include <linux/seccomp.h>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/syscall.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <cstddef>

namespace gritwright::tests {

/// From here on a socket for IPv4 or IPv6 raises SIGSYS in this program and those it starts. False where the kernel can't.
inline bool forbid_network() {
  std::signal(SIGSYS, [](int) {
    constexpr char words[] = "a socket for the internet was asked for; these programs talk to nobody\n";
    (void)!::write(STDERR_FILENO, words, sizeof words - 1);
    ::_exit(99);
  });
  constexpr auto low_word = static_cast<unsigned>(offsetof(seccomp_data, args));
  std::array<sock_filter, 7> filter{{
      BPF_STMT(BPF_LD | BPF_W | BPF_ABS, offsetof(seccomp_data, nr)),
      BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, SYS_socket, 0, 4),
      BPF_STMT(BPF_LD | BPF_W | BPF_ABS, low_word),
      BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, AF_INET, 1, 0),
      BPF_JUMP(BPF_JMP | BPF_JEQ | BPF_K, AF_INET6, 0, 1),
      BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_TRAP),
      BPF_STMT(BPF_RET | BPF_K, SECCOMP_RET_ALLOW),
  }};
  sock_fprog program{static_cast<unsigned short>(filter.size()), filter.data()};
  return ::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) == 0 && ::prctl(PR_SET_SECCOMP, SECCOMP_MODE_FILTER, &program) == 0;
}

}  // namespace gritwright::tests
